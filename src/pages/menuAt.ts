/** A menu of the grid that is open, at a place in the window. */
export interface MenuAt {
	readonly of: 'row' | 'column';
	readonly x: number;
	readonly y: number;
	/** See `GridMenu`. */
	readonly right?: number;
}
