import type { Session } from '../app/session.svelte.ts';
import type { Step } from '../app/history.svelte.ts';
import { type CellChange, typeCells } from '../core/commands/typeCells.ts';
import { formatTypeable } from '../core/length/formatLength.ts';
import { type Length, length } from '../core/length/length.ts';
import { workOut } from '../core/row/workOut.ts';
import type { Command } from '../core/show/edit.ts';
import { nameOfPrint } from '../core/show/nameOfPrint.ts';
import {
	type Arranged,
	columnWith,
	dropOf,
	evenOut,
	giveToWall,
	type HeightOrder,
	leftText,
	mirrorWall,
	orderByHeight,
	orderOnWall,
	putInOrder,
	swapPrints,
	takeDown,
} from '../core/walls/arrange.ts';
import { hangWalls } from '../core/walls/hangWalls.ts';
import type { Hanging } from '../core/walls/hungPrint.ts';
import { hangWithout } from '../core/walls/ways.ts';

/** What is done to prints on their walls: each one edit, and one step of undo. */
export class WallWork {
	readonly #session: Session;
	/** The run of keys that moves one print: one step, however many there are. */
	#nudged: { readonly place: number; readonly step: Step } | undefined;

	constructor(session: Session) {
		this.#session = session;
	}

	get #show(): Arranged {
		const { show, results, settings } = this.#session;
		return { rows: show.rows, results, settings };
	}

	#type(changes: readonly CellChange[], label: string): Step | undefined {
		this.#nudged = undefined;
		if (changes.length === 0) return undefined;
		return this.#session.do((show, settings) => typeCells(show, changes, settings, label));
	}

	#name = (place: number) => nameOfPrint(this.#session.show.rows[place]!, place);
	#id = (place: number) => this.#session.show.rows[place]!.id;

	/** Where the left edge of a print is with nothing typed of it, or its middle. */
	evenOf(place: number, axis: 'across' | 'up'): Length | undefined {
		if (axis === 'up') return this.#hungWithout(place, 'hang centre', place)?.centre;
		const column = columnWith(this.#show, place);
		const typed = column.find((each) => this.#session.results[each]!.read.cells.hangLeft);
		return this.#hungWithout(typed ?? place, 'hang left', place)?.left;
	}

	#hungWithout(cleared: number, column: 'hang left' | 'hang centre', place: number) {
		const { results, settings } = this.#session;
		return hangWithout(results, cleared, column, settings)?.prints.find((print) => print.place === place);
	}

	/** A print was dropped on its wall: a place of its own, its even place, or another order. */
	drop(place: number, left: Length, near: number): void {
		const { results, settings } = this.#session;
		const { wall } = results[place]!.hangs;
		if (wall === undefined) return;
		const hung = hangWalls(results, settings).walls[wall]!;
		const drop = dropOf(this.#show, hung, place, { left, even: this.evenOf(place, 'across'), near });
		if (drop.kind === 'even') this.even(place);
		else if (drop.kind === 'order')
			this.#type(putInOrder(this.#show, place, wall, drop.at), `Move ${this.#name(place)} in the order`);
		else this.#type([this.#leftAt(place, drop.left)], `Move ${this.#name(place)}`);
	}

	/** A print was dropped at a height; undefined: at the one that it has with none typed. */
	lift(place: number, centre: Length | undefined): void {
		const text = centre === undefined ? '' : formatTypeable(centre, this.#session.settings.unit);
		const label = `${centre === undefined ? 'Usual height for' : 'Move'} ${this.#name(place)}`;
		this.#type([{ id: this.#id(place), cells: { 'hang centre': text } }], label);
	}

	#leftAt = (place: number, left: Length): CellChange => ({
		id: this.#id(place),
		cells: { 'hang left': leftText(left, this.#session.settings) },
	});

	/** Moves a print by keys. A run of them on one print is one step. */
	nudge(place: number, across: Length, up: Length): void {
		const { hung } = this.#session.results[place]!;
		if (!hung) return;
		const { unit } = this.#session.settings;
		const cells = {
			...(across !== 0 && { 'hang left': leftText(length(hung.left + across), this.#session.settings) }),
			...(up !== 0 && { 'hang centre': formatTypeable(length(Math.max(1, hung.centre + up)), unit) }),
		};
		const before = this.#nudged;
		const id = this.#id(place);
		const typed = this.#session.show.rows[place]!.typed;
		const all = {
			...(before?.place === place && typed['hang left'] !== undefined && { 'hang left': typed['hang left'] }),
			...(before?.place === place && typed['hang centre'] !== undefined && { 'hang centre': typed['hang centre'] }),
			...cells,
		};
		const move: Command = (show, settings) =>
			typeCells(show, [{ id, cells: all }], settings, `Move ${this.#name(place)}`);
		const isRun = before?.place === place && this.#session.lastStep === before.step;
		const step = isRun ? this.#session.doInstead(before.step, move) : this.#session.do(move);
		this.#nudged = step && { place, step };
	}

	/** Clears what is typed of a print's place: it hangs evenly again. */
	even(place: number): void {
		const column = columnWith(this.#show, place);
		const changes = column.map((each) => ({ id: this.#id(each), cells: { 'hang left': '', 'hang centre': '' } }));
		this.#type(changes, `Even spacing for ${this.#name(place)}`);
	}

	/** Types a cell of a print. */
	type(place: number, column: 'hang left' | 'hang centre' | 'drop', text: string): void {
		this.#type([{ id: this.#id(place), cells: { [column]: text } }], `Type ${column}`);
	}

	/** Puts prints on a wall, behind what hangs there; one of them at a place along it. */
	give(places: readonly number[], wall: number, along?: Length): void {
		const { name } = this.#session.settings.walls[wall]!;
		const what = places.length === 1 ? this.#name(places[0]!) : `${places.length} prints`;
		const only = places[0];
		const changes =
			along === undefined || places.length > 1 || only === undefined
				? giveToWall(this.#show, places, wall)
				: putInOrder(this.#show, only, wall, this.#orderAt(wall, along, only));
		this.#type(changes, `Hang ${what} on ${name}`);
	}

	/** How many columns of a wall stand before a place along it. */
	#orderAt(wall: number, along: Length, own: number): number {
		const { results, settings } = this.#session;
		const { prints } = hangWalls(results, settings).walls[wall]!;
		const columns = orderOnWall({ results, settings }, wall).filter((column) => !column.includes(own));
		return columns.filter((column) => {
			const print = prints.find(({ place }) => place === column[0])!;
			return print.left + print.size.width / 2 < along;
		}).length;
	}

	takeDown(places: readonly number[]): void {
		this.#type(
			takeDown(this.#show, places),
			`Take ${places.length === 1 ? this.#name(places[0]!) : `${places.length} prints`} off the wall`,
		);
	}

	/** Moves a print one place on in the order of its wall. */
	step(place: number, by: 1 | -1): void {
		const { wall } = this.#session.results[place]!.hangs;
		if (wall === undefined) return;
		const columns = orderOnWall(this.#show, wall);
		const at = columns.findIndex((column) => column.includes(place)) + by;
		if (at < 0 || at >= columns.length) return;
		this.#type(putInOrder(this.#show, place, wall, at), `Move ${this.#name(place)} in the order`);
	}

	swap(one: number, other: number): void {
		this.#type(swapPrints(this.#show, one, other), `Swap ${this.#name(one)} and ${this.#name(other)}`);
	}

	/** What an arrangement would type, and how the walls hang then. */
	propose(
		kind: Arrangement,
		wall: number,
		heights: HeightOrder,
	): { readonly changes: readonly CellChange[]; readonly after: Hanging } {
		const show = this.#show;
		const make = {
			'even out': () => evenOut(show),
			mirror: () => mirrorWall(show, wall),
			'by height': () => orderByHeight(show, wall, heights),
		};
		const changes = make[kind]();
		const { results, settings } = this.#session;
		const edit = typeCells(this.#session.show, changes, settings, arrangements[kind]);
		const rows = new Map(edit.rows.flatMap(({ after }) => (after ? [[after.id, after] as const] : [])));
		const hung = show.rows.map((row, place) => {
			const changed = rows.get(row.id);
			return changed ? workOut(changed, settings) : results[place]!;
		});
		return { changes, after: hangWalls(hung, settings) };
	}

	/** Makes what was proposed. @param label what undo calls it */
	arrange(changes: readonly CellChange[], label: string): void {
		this.#type(changes, label);
	}
}

/** Ways to arrange walls as a whole. */
export type Arrangement = 'even out' | 'mirror' | 'by height';

/** What each is called, on its button and by undo. */
export const arrangements: Readonly<Record<Arrangement, string>> = {
	'even out': 'Even out all walls',
	mirror: 'Mirror the wall',
	'by height': 'Order by height',
};
