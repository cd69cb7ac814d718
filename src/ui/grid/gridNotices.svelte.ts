import type { Edit } from '../../core/show/edit.ts';

/** What the grid says: aloud, and where it has to be read as well. */
export class GridNotices {
	/** What is heard. */
	heard = $state.raw('');
	/** What has to be read: that something cannot be done, and why. */
	shown = $state.raw<string>();
	/** What was done last that may not have been meant, to be undone where it is said. */
	done = $state.raw<{ readonly said: string; readonly step: Edit }>();

	/** Says something aloud. */
	say(sentence: string): void {
		this.heard = sentence;
	}

	/** Says something aloud that has to be read as well. */
	show(sentence: string): void {
		this.shown = sentence;
		this.say(sentence);
	}

	/** Says what was done, and that it can be undone. */
	showDone(said: string, step: Edit): void {
		this.done = { said, step };
		this.say(said);
	}

	/** What was shown has been read. */
	close(): void {
		this.shown = this.done = undefined;
	}
}
