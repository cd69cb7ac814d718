/** What is done before the window of a taped inner mount is cut, in a sentence. */
export const tapedWords =
	'Taped: each inner blank behind its cut outer mount, that mount’s drop-out put back; the edges are the outer mount’s.';
