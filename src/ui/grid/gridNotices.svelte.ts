/** What the grid says: aloud, and where it has to be read as well. */
export class GridNotices {
	/** What is heard. */
	heard = $state.raw('');
	/** What has to be read: that something cannot be done, and why. */
	shown = $state.raw<string>();

	/** Says something aloud. */
	say(sentence: string): void {
		this.heard = sentence;
	}

	/** Says something aloud that has to be read as well. */
	show(sentence: string): void {
		this.shown = sentence;
		this.say(sentence);
	}

	/** What was shown has been read. */
	close(): void {
		this.shown = undefined;
	}
}
