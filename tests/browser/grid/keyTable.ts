/** What is seen after the keys; only what a line names is looked at. */
export interface Then {
	/** The cell that has the focus, as `row key`, open or not. */
	readonly at?: string;
	/** What is in the open editor; `closed` where there is none. */
	readonly editor?: string;
	/** What of it is selected. */
	readonly chosen?: string;
	/** What stands in cells, by `row key`. */
	readonly cells?: Readonly<Record<string, string>>;
	/** How many rows there are. */
	readonly rows?: number;
	readonly range?: string;
	/** What was said aloud last. */
	readonly said?: RegExp;
	/** What is to be read under the grid. */
	readonly note?: RegExp;
	/** The list of words: what it offers, the active one in brackets; `none` where there is none. */
	readonly list?: string;
	/** What of it is undone by one step. */
	readonly undo?: Readonly<Record<string, string>>;
}

/** One line: the state in words, the cell from which it begins, the keys, and what happens. */
export type KeyLine = readonly [state: string, from: string, keys: string, then: Then];

/**
 * The keys of the grid: from which cell, in which state; the keys, where `'text'` is typed; and what happens. The show:
 * four prints, all with a picture of 300 x 200; the boards Chalk and Slate, the frame Oak.
 */
export const keyTable: readonly KeyLine[] = [
	// Tab and Enter
	[
		'a run of Tab',
		'0 title',
		`'Low' Tab Tab '310' Tab '210' Enter`,
		{ at: '1 title', cells: { '0 picture width': '310 typed' } },
	],
	['a run of Tab through cells that are not typed', '0 title', `Tab Tab Tab '9' Enter`, { at: '1 title' }],
	['a run of Tab and back', '1 picture width', `'1' Tab '2' Shift+Tab '3' Enter`, { at: '2 picture width' }],
	['a run of Tab, ended by an arrow', '0 title', `Tab Tab ArrowUp ArrowDown '320' Enter`, { at: '1 picture width' }],
	[
		'a run of Tab in the last row',
		'3 title',
		`'Last' Tab Tab '320' Enter 'New'`,
		{ at: '4 title', editor: 'New', rows: 5 },
	],
	[
		'two rows typed by Tab and Enter',
		'2 picture width',
		`'1' Tab '2' Enter '3' Tab '4' Enter`,
		{
			cells: {
				'2 picture width': '1 typed',
				'2 picture height': '2 typed',
				'3 picture width': '3 typed',
				'3 picture height': '4 typed',
			},
		},
	],
	['Enter in the last row, left with nothing typed', '3 title', `'Last' Enter ArrowUp`, { at: '3 title', rows: 4 }],
	['Enter in the last row, typed into', '3 title', `'Last' Enter 'More' ArrowUp`, { at: '3 title', rows: 5 }],
	// Arrows
	[
		'typed over, right',
		'0 picture width',
		`'310' ArrowRight`,
		{ at: '0 picture height', editor: 'closed', cells: { '0 picture width': '310 typed' } },
	],
	[
		'typed over, left',
		'0 picture width',
		`'310' ArrowLeft`,
		{ at: '0 shape', cells: { '0 picture width': '310 typed' } },
	],
	[
		'typed over, down',
		'0 picture width',
		`'310' ArrowDown`,
		{ at: '1 picture width', cells: { '0 picture width': '310 typed' } },
	],
	[
		'typed over, up',
		'1 picture width',
		`'310' ArrowUp`,
		{ at: '0 picture width', cells: { '1 picture width': '310 typed' } },
	],
	[
		'opened by F2, left moves the caret',
		'0 picture width',
		`F2 End ArrowLeft '9'`,
		{ at: '0 picture width', editor: '3090' },
	],
	['opened by F2, down stays', '0 picture width', `F2 ArrowDown`, { at: '0 picture width', editor: '300' }],
	[
		'typed over, and not read',
		'0 picture width',
		`'wide' ArrowDown`,
		{ at: '0 picture width', editor: 'wide', chosen: 'wide', said: /wide/ },
	],
	[
		'not read: what is typed next takes its place',
		'0 picture width',
		`'wide' Enter '310' Enter`,
		{ at: '1 picture width', cells: { '0 picture width': '310 typed' } },
	],
	// A selection
	[
		'Ctrl+Enter in a selection',
		'0 side',
		`Shift+ArrowRight Shift+ArrowDown '70' Control+Enter`,
		{
			editor: 'closed',
			cells: { '0 side': '70 typed', '0 top': '70 typed', '1 side': '70 typed', '1 top': '70 typed' },
			range: '0 side to 1 top',
			undo: { '0 side': '103 worked-out', '1 top': '98 worked-out' },
		},
	],
	[
		'Ctrl+Enter in one cell',
		'0 side',
		`'70' Control+Enter`,
		{ at: '0 side', editor: 'closed', cells: { '0 side': '70 typed' }, rows: 4 },
	],
	['Ctrl+Enter, not read', '0 side', `Shift+ArrowDown 'x' Control+Enter`, { editor: 'x', chosen: 'x' }],
	[
		'Enter goes round in a selection',
		'0 side',
		`Shift+ArrowRight Shift+ArrowDown '70' Enter '71' Enter '72' Enter '73' Enter`,
		{
			at: '0 side',
			cells: { '0 side': '70 typed', '1 side': '71 typed', '0 top': '72 typed', '1 top': '73 typed' },
			range: '0 side to 1 top',
		},
	],
	[
		'Tab goes round in a selection',
		'0 side',
		`Shift+ArrowRight Shift+ArrowDown '70' Tab Tab '71' Tab`,
		{ at: '1 top', cells: { '1 side': '71 typed' }, range: '0 side to 1 top' },
	],
	[
		'Enter goes on in a selection that is not typed into',
		'0 side',
		`Shift+ArrowDown Enter`,
		{ at: '1 side', editor: 'closed' },
	],
	['Shift+Enter goes back in a selection', '0 side', `Shift+ArrowDown Shift+Enter`, { at: '1 side', editor: 'closed' }],
	// What can do nothing says why
	['Ctrl+D in the first row', '0 side', 'Control+d', { note: /no print above/ }],
	['Ctrl+R in the first column', '0 number', 'Control+r', { note: /no column before/ }],
	['Ctrl+D of cells that are the same', '0 picture width', 'Shift+ArrowDown Control+d', { note: /hold that already/ }],
	['Ctrl+R into cells that are worked out', '0 steps', 'Control+r', { note: /only be worked out/ }],
	['Ctrl+D in a head', '0 side', 'ArrowUp Control+d', { note: /head of a column/ }],
	['a paste into a head', '0 side', 'ArrowUp paste:7', { note: /head of a column/ }],
	['a paste of what is there', '0 picture width', 'paste:300', { note: /hold that already/ }],
	['a paste of nothing', '0 picture width', 'paste:', { note: /Nothing on the clipboard can be pasted/ }],
	// Enter on a cell that is not open
	['Enter opens', '0 title', 'Enter', { at: '0 title', editor: 'Print 1', chosen: 'Print 1' }],
	// Words
	['F2 on words', '0 signed on', 'F2', { editor: '', list: 'picture, margin, back, mount' }],
	['Alt+Down on words', '0 signed on', 'Alt+ArrowDown', { list: 'picture, margin, back, mount' }],
	[
		'Alt+Down elsewhere',
		'0 title',
		'Alt+ArrowDown',
		{ at: '0 title', editor: 'closed', said: /no list/, cells: { '0 title': 'Print 1 typed' } },
	],
	['Alt+Up moves no print', '1 title', 'Alt+ArrowUp', { at: '1 title', cells: { '1 title': 'Print 2 typed' } }],
	[
		'Alt+Shift+Down moves a print',
		'0 title',
		'Alt+Shift+ArrowDown',
		{ at: '1 title', cells: { '0 title': 'Print 2 typed', '1 title': 'Print 1 typed' } },
	],
	[
		'Alt+Shift+Up moves a print',
		'1 title',
		'Alt+Shift+ArrowUp',
		{ at: '0 title', cells: { '0 title': 'Print 2 typed' } },
	],
	[
		'Ctrl+Shift+D duplicates a print',
		'0 title',
		'Control+Shift+D',
		{ at: '1 title', cells: { '1 title': 'Print 1 typed' }, rows: 5 },
	],
	['down in a list', '0 signed on', 'F2 ArrowDown ArrowDown', { list: 'picture, [margin], back, mount' }],
	['up in a list', '0 signed on', 'F2 ArrowUp', { list: 'picture, margin, back, [mount]' }],
	[
		'Enter in a list',
		'0 signed on',
		'F2 ArrowDown ArrowDown Enter',
		{ at: '1 signed on', cells: { '0 signed on': 'margin typed' }, list: 'none' },
	],
	['Tab in a list', '0 signed on', 'F2 ArrowDown Tab', { cells: { '0 signed on': 'picture typed' }, list: 'none' }],
	[
		'Escape in a list',
		'0 signed on',
		'F2 ArrowDown Escape',
		{ at: '0 signed on', editor: 'closed', cells: { '0 signed on': '' }, list: 'none' },
	],
	['typing filters a list', '0 surface', `F2 'sat'`, { list: '[satin]' }],
	[
		'typing chooses in a list where no other word means anything',
		'0 glazing',
		`F2 'ac' Enter`,
		{ cells: { '0 glazing': 'acrylic typed' } },
	],
	['words of the show', '0 board', 'F2', { list: 'Chalk, Slate' }],
	['frames of the show', '0 frame', 'F2', { list: 'Oak, none' }],
	[
		'another word where it has a meaning',
		'0 mount',
		`F2 '60 x 45 cm' Enter`,
		{ at: '1 mount', cells: { '0 mount': '60 x 45 cm typed' } },
	],
	[
		'typed over, words have no list, and an arrow moves on',
		'0 glazing',
		`'glass' ArrowDown`,
		{ at: '1 glazing', list: 'none', cells: { '0 glazing': 'glass typed' } },
	],
	['Alt+Down while typing over', '0 glazing', `'a' Alt+ArrowDown`, { editor: 'a', list: 'none, glass, acrylic' }],
	[
		'a word that means nothing: glazing',
		'0 glazing',
		`'ac' Enter`,
		{ editor: 'ac', chosen: 'ac', said: /“ac” is not a glazing/ },
	],
	[
		'a word that means nothing: surface',
		'0 surface',
		`'shiny' Enter`,
		{ editor: 'shiny', said: /“shiny” is not a surface/ },
	],
	[
		'a word that means nothing: signed on',
		'0 signed on',
		`'front' Enter`,
		{ editor: 'front', said: /“front” is not a place to sign/ },
	],
	['a frame that is not listed', '0 frame', `'nosuch' Enter`, { said: /no frame “nosuch”/ }],
];

/** Where the habit of Enter is to go down. */
export const downTable: readonly KeyLine[] = [
	['Enter goes down', '0 title', 'Enter', { at: '1 title', editor: 'closed' }],
	['Shift+Enter goes up', '1 title', 'Shift+Enter', { at: '0 title', editor: 'closed' }],
	['Enter after a run of Tab', '0 title', 'Tab Tab Enter', { at: '1 title', editor: 'closed' }],
	['F2 opens', '0 title', 'F2', { at: '0 title', editor: 'Print 1' }],
];
