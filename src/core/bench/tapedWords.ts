/** What is done before the window of a taped inner mount is cut, in a sentence. */
export const tapedWords =
	'Put each drop-out back into its cut outer mount and tape the inner blank behind it. Measure from the outer mount’s edges.';
