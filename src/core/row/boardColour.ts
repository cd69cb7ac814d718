import type { FoundBoard } from './boards.ts';

/** Colours of boards as they are sold, in sRGB, a little muted as board is. Common names; what each looks like is ours. */
const colours: Readonly<Record<string, string>> = {
	white: '#f7f6f2',
	'off white': '#f3efe4',
	ivory: '#f1ead8',
	cream: '#efe6cd',
	natural: '#ede3cf',
	buff: '#dcc9a3',
	sand: '#d8c8a8',
	beige: '#dccfb6',
	oatmeal: '#d9cdb6',
	stone: '#c9c2b4',
	grey: '#a3a19c',
	'light grey': '#cbc9c4',
	'dark grey': '#5f5e5b',
	charcoal: '#454442',
	black: '#262524',
	brown: '#6f5440',
	'dark brown': '#46352a',
	red: '#9c3a34',
	burgundy: '#6a2b33',
	pink: '#dbb3ae',
	orange: '#c67b41',
	yellow: '#dcbf5c',
	gold: '#b79b5a',
	green: '#5f7a58',
	'dark green': '#3a4d3c',
	'light green': '#b3c2a6',
	olive: '#7c7a4c',
	blue: '#4d6a8e',
	'dark blue': '#2f4059',
	'light blue': '#b5c7d6',
	navy: '#2b3650',
	purple: '#6a5170',
	silver: '#bdbdba',
};

const otherWords: Readonly<Record<string, string>> = { gray: 'grey', pale: 'light', deep: 'dark', antique: 'off' };

/**
 * The colour of a board for drawings, as CSS has it: by its `colour`, else by a colour in its name. The longest name of a
 * colour in it counts; `#a08060` is itself. Undefined where nothing says it.
 */
export function boardColour({ board, name }: Pick<FoundBoard, 'board' | 'name'>): string | undefined {
	return colourIn(board?.colour ?? '') ?? colourIn(name);
}

function colourIn(text: string): string | undefined {
	const hex = /#(?:[0-9a-f]{6}|[0-9a-f]{3})\b/i.exec(text);
	if (hex) return hex[0].toLowerCase();
	const words = text
		.toLowerCase()
		.split(/[^a-z]+/)
		.map((word) => otherWords[word] ?? word);
	const said = ` ${words.join(' ')} `;
	const named = Object.keys(colours).filter((colour) => said.includes(` ${colour} `));
	const longest = named.toSorted((a, b) => b.length - a.length)[0];
	return longest === undefined ? undefined : colours[longest];
}

/** A colour in which words are read on a board; undefined where the board has none of its own. */
export function wordsOn(board: string | undefined): string | undefined {
	if (board === undefined) return undefined;
	const digits = board.slice(1);
	const each = digits.length / 3;
	const [red, green, blue] = [0, 1, 2].map(
		(place) => parseInt(digits.slice(place * each, (place + 1) * each).padEnd(2, digits[place * each]), 16) / 255,
	) as [number, number, number];
	// Relative luminance, nearly (WCAG 2.2): either black or white has a contrast of 4.5 : 1 on any colour.
	const luminance = 0.2126 * red ** 2.2 + 0.7152 * green ** 2.2 + 0.0722 * blue ** 2.2;
	return luminance > 0.18 ? '#1c1a18' : '#ffffff';
}
