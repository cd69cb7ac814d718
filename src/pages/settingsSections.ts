/** The sections of the settings, in the order of their list; one is open at a time. */
export const settingsSections = [
	{ id: 'show', heading: 'Name and units' },
	{ id: 'mount', heading: 'Mount and window' },
	{ id: 'boards', heading: 'Boards' },
	{ id: 'frames', heading: 'Frames' },
	{ id: 'materials', heading: 'Glazing and supplies' },
	{ id: 'papers', heading: 'Papers' },
	{ id: 'walls', heading: 'Walls and hanging' },
	{ id: 'labels', heading: 'Labels' },
	{ id: 'sales', heading: 'Prices and commission' },
	{ id: 'lists', heading: 'Catalogue and packing' },
	{ id: 'rules', heading: 'Rules of the show' },
	{ id: 'bench', heading: 'Bench and cutter' },
] as const;

/** A section of the settings, as the address names it: `#settings/boards`. */
export type SettingsSection = (typeof settingsSections)[number]['id'];
