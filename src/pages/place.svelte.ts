import { type SettingsSection, settingsSections } from './settingsSections.ts';

/** A place in the app, named by what one does there. */
export type Place = (typeof places)[number];

const places = [
	...(['shows', 'prints', 'across', 'frames', 'settings', 'boards', 'get', 'print-list'] as const),
	...(['wall', 'bench', 'cut', 'knife', 'finish', 'hang', 'paper', 'sales', 'help'] as const),
] as const;

/** The place that is open, as the address names it after its `#`, so that the back button works. */
export class Places {
	current: Place = $state(read());
	/** The place that was open before; at first the one that is open. */
	before: Place = $state(read());
	/** The section of the settings that the address names; undefined where it names none. */
	section: SettingsSection | undefined = $state(readSection());
	/** The place whose documents the address asks for on paper: `#paper/bench`; undefined where it asks for none. */
	printed: Place | undefined = $state(readPrinted());

	/** @param left the place at which the show was last left, opened where the address names none */
	constructor(left?: string) {
		const place = places.find((each) => each === left);
		if (place === undefined || location.hash !== '') return;
		history.replaceState(null, '', `#${place}`);
		this.current = place;
	}

	/** @param section of the settings; undefined: the one that was open last */
	go(place: Place, section?: SettingsSection): void {
		location.hash = section === undefined ? place : `${place}/${section}`;
	}

	/** Follows the address from now on. @returns stops following */
	follow(): () => void {
		const onhashchange = () => {
			// What is typed counts before its field goes: afterwards nothing hears of it in some browsers.
			if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
			this.section = readSection();
			this.printed = readPrinted();
			if (read() === this.current) return;
			this.before = this.current;
			this.current = read();
		};
		addEventListener('hashchange', onhashchange);
		return () => removeEventListener('hashchange', onhashchange);
	}
}

function read(): Place {
	const [name] = location.hash.slice(1).split('/');
	return places.find((place) => place === name) ?? 'prints';
}

function readSection(): SettingsSection | undefined {
	const [place, name] = location.hash.slice(1).split('/');
	return place === 'settings' ? settingsSections.find(({ id }) => id === name)?.id : undefined;
}

function readPrinted(): Place | undefined {
	const [place, name] = location.hash.slice(1).split('/');
	return place === 'paper' ? places.find((each) => each === name) : undefined;
}

/** What each place is called where a link leads back to it. */
export const placeNames: Readonly<Record<Place, string>> = {
	shows: 'Shows',
	prints: 'Prints',
	across: 'Whole show',
	frames: 'Frames for all prints',
	settings: 'Settings',
	boards: 'Boards',
	get: 'To get',
	'print-list': 'Pictures to print',
	wall: 'Wall',
	hang: 'hanging',
	bench: 'Bench',
	cut: 'cutting windows',
	knife: 'cutting sheets',
	finish: 'finishing',
	paper: 'On paper',
	sales: 'Sales',
	help: 'Help',
};

/** The places that the head leads to, in the order of the work. */
export const headPlaces = ['prints', 'across', 'boards', 'get', 'bench', 'wall', 'paper'] as const satisfies Place[];

/** The places behind the show's name, which one goes to now and then. */
export const namePlaces = ['sales', 'settings', 'shows', 'help'] as const satisfies Place[];

/** The places that have none of their own in the head, and the one that leads to them. */
const parents: Partial<Record<Place, Place>> = { 'print-list': 'get', frames: 'prints' };

/** The place of the head that a place belongs to. */
export const parentOf = (place: Place): Place => parents[place] ?? place;
