/** A place in the app, named by what one does there. */
export type Place = 'shows' | 'prints' | 'across' | 'settings' | 'boards' | 'bench' | 'cut' | 'knife' | 'paper';

const places: readonly Place[] = ['shows', 'prints', 'across', 'settings', 'boards', 'bench', 'cut', 'knife', 'paper'];

/** Where one is, as the address says after its `#`, so that the back button works. */
export class Places {
	current: Place = $state(read());
	/** Where one came from; at first where one is. */
	before: Place = $state(read());

	/** @param left where one was in the show when it was last left: there one begins where the address names no place */
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
