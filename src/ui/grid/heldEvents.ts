/** The keys that the grid answers, or may; all others stay the browser's. */
const named = /^(Arrow\w+|Home|End|Page\w+|Enter|Tab|Escape|Delete|Backspace|ContextMenu|F[26789]|F10)$/;
const withControl = /^[adfryz ]$/i;

/** Whether a key is one that the grid may answer. What copies, cuts and pastes comes as another event. */
export function isOfGrid({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean {
	if (named.test(key)) return true;
	if (ctrlKey || metaKey || altKey) return withControl.test(key);
	return key.length === 1;
}

/** What is pasted. */
export type Pasted = Pick<ClipboardEvent, 'clipboardData'>;

/** What a paste holds, which can be read only while it comes, to be pasted later. */
export function heldPaste({ clipboardData }: ClipboardEvent): Pasted {
	const held = new DataTransfer();
	for (const type of clipboardData?.types ?? []) if (type !== 'Files') held.setData(type, clipboardData!.getData(type));
	return { clipboardData: held };
}
