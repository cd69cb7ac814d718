/** A place in the app, named by what one does there. */
export type Place = (typeof places)[number];

const places = [
	...(['shows', 'prints', 'across', 'frames', 'settings', 'boards', 'get', 'print-list'] as const),
	...(['bench', 'cut', 'knife', 'paper'] as const),
] as const;

/** The place that is open, as the address names it after its `#`, so that the back button works. */
export class Places {
	current: Place = $state(read());
	/** The place that was open before; at first the one that is open. */
	before: Place = $state(read());

	/** @param left the place at which the show was last left, opened where the address names none */
	constructor(left?: string) {
		const place = places.find((each) => each === left);
		if (place === undefined || location.hash !== '') return;
		history.replaceState(null, '', `#${place}`);
		this.current = place;
	}

	go(place: Place): void {
		location.hash = place;
	}

	/** Follows the address from now on. @returns stops following */
	follow(): () => void {
		const onhashchange = () => {
			if (read() === this.current) return;
			this.before = this.current;
			this.current = read();
		};
		addEventListener('hashchange', onhashchange);
		return () => removeEventListener('hashchange', onhashchange);
	}
}

function read(): Place {
	const name = location.hash.slice(1);
	return places.find((place) => place === name) ?? 'prints';
}
