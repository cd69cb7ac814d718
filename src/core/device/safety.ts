import { changesInWords } from './reminder.ts';

/** What is known of how safe the shows are on this device. */
export interface Safety {
	/** Whether the app is installed; undefined where that cannot be told. */
	readonly isInstalled: boolean;
	/** Whether the browser has promised to keep what is stored; undefined where it does not say. */
	readonly isPersistent: boolean | undefined;
	/** Whether the app is open in a tab of a browser that clears what a tab has stored after some days without use. */
	readonly isPassingTab: boolean;
	/** When the last copy of the show was given, in words; undefined where none was. */
	readonly copiedOn: string | undefined;
	/** How many changes are in no file that was given. */
	readonly changesSince: number;
}

/** How safe the shows are, in sentences, the most telling first. */
export function safetySentences({
	isInstalled,
	isPersistent,
	isPassingTab,
	copiedOn,
	changesSince,
}: Safety): readonly string[] {
	const kept =
		isPersistent === undefined
			? 'This browser does not say whether it keeps what is stored when room runs short.'
			: isPersistent
				? 'This browser has promised to keep what is stored here, also when room runs short.'
				: isPassingTab
					? 'This browser may clear what is stored here when room runs short.'
					: 'This browser may clear what is stored here when room runs short, or when the app is not opened for weeks.';
	const installed = isInstalled
		? 'The app is installed.'
		: isPassingTab
			? `${passingTab} To move shows there, save a backup here and open it there.`
			: 'The app is not installed. Install it, or add it to the home screen, and your shows stay for longer.';
	return [copySentence(copiedOn, changesSince), kept, installed];
}

const passingTab =
	'This browser may clear what this tab has stored after seven days without use. Press Share, then Add to Home Screen, and open the app from there. Its storage there is its own and lasts.';

/** Said before anything is typed into a tab that may be cleared. */
export const homeScreenFirst = `${passingTab} Shows typed here stay in this tab.`;

function copySentence(copiedOn: string | undefined, since: number): string {
	if (copiedOn === undefined)
		return since === 0
			? 'Nothing of this show is in a file yet, and nothing has been typed.'
			: 'This device holds the only copy. Never backed up.';
	return since === 0
		? `Last backed up ${copiedOn}. Nothing has changed since.`
		: `Last backed up ${copiedOn}; ${changesInWords(since)} since.`;
}
