import type { costReason, printCosts } from '../core/order/printCosts.ts';
import type { CostOfRow } from '../core/record/priceOf.ts';
import type { ToGet } from '../core/order/whatToGet.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { ColumnName } from '../core/show/columns.ts';
import type { Row, RowId } from '../core/show/row.ts';

/** Pause after a change before costs are worked out again, in milliseconds: nothing of it is done between two keystrokes. */
const pauseMs = 400;

interface Made {
	readonly toGet: ToGet;
	readonly rows: readonly Row[];
	readonly places: ReadonlyMap<RowId, number>;
	readonly costs: readonly (number | undefined)[];
	readonly costReason: typeof costReason;
	/** The places of rows that take something without a price. */
	readonly partial: ReadonlySet<number>;
}

/** What costs follow from. */
export interface CostsSource {
	readonly rows: readonly Row[];
	readonly settings: Settings;
	readonly toGet: () => ToGet;
	/** How they follow: that is loaded with what plans, after the first screen. */
	readonly printCosts: typeof printCosts;
	readonly costReason: typeof costReason;
}

/**
 * What each print costs, as it was when typing last paused, by the plans that there were. A row of which
 * anything has changed since that costs follow from has none until then; in a show without prices nothing is worked out.
 */
export class LateCosts {
	#made = $state.raw<Made>();
	#read: (() => CostsSource) | undefined;
	#timer: ReturnType<typeof setTimeout> | undefined;

	/** Begins to work costs out. @param read what they follow from now */
	begin(read: () => CostsSource): void {
		this.#read = read;
	}

	/** What a print costs, in whole minor units; undefined where that is not known. */
	costOf(row: Row): number | undefined {
		const place = this.#placeOf(row);
		return place === undefined ? undefined : this.#made?.costs[place];
	}

	/** What all copies of a row cost, and whether that is all of it; undefined where it is not known. */
	costOfRow(row: Row): CostOfRow | undefined {
		const place = this.#placeOf(row);
		const minorUnits = place === undefined ? undefined : this.#made?.costs[place];
		return minorUnits === undefined ? undefined : { minorUnits, isPartial: this.#made!.partial.has(place!) };
	}

	/** Why a print costs what it does, in sentences. */
	reasonOf(row: Row, settings: Settings): string | undefined {
		const place = this.#placeOf(row);
		return place === undefined ? undefined : this.#made!.costReason(this.#made!.toGet, place, settings.currency);
	}

	/** Has the costs worked out when there is a pause. */
	later(): void {
		clearTimeout(this.#timer);
		this.#timer = setTimeout(() => this.now(), pauseMs);
	}

	/** Works the costs out at once. */
	now(): void {
		clearTimeout(this.#timer);
		if (!this.#read) return;
		const { rows, settings, toGet: read, printCosts, costReason } = this.#read();
		if (!hasPrices(settings)) {
			this.#made = undefined;
			return;
		}
		const toGet = read();
		const places = new Map(rows.map(({ id }, place) => [id, place]));
		const partial = new Set(toGet.unpriced.flatMap(({ taken }) => [...taken.keys()]));
		this.#made = { toGet, rows, places, costs: printCosts(toGet), costReason, partial };
	}

	/** Where a row stood when costs were worked out; undefined where it has changed since in what costs follow from. */
	#placeOf(row: Row): number | undefined {
		const place = this.#made?.places.get(row.id);
		return place !== undefined && isSameWork(this.#made!.rows[place]!, row) ? place : undefined;
	}

	/** Ends everything. */
	stop(): void {
		clearTimeout(this.#timer);
		this.#read = undefined;
	}
}

/** What is written down of a print without changing what is made. */
const ofRecord: ReadonlySet<string> = new Set<ColumnName>([
	...(['net', 'price', 'value', 'stage', 'buyer', 'medium', 'year', 'note'] as const),
]);

/** Whether two states of a row are made alike. */
function isSameWork(a: Row, b: Row): boolean {
	if (a === b) return true;
	if (a.units !== b.units) return false;
	const columns = new Set([...Object.keys(a.typed), ...Object.keys(b.typed)] as ColumnName[]);
	return [...columns].every((column) => ofRecord.has(column) || a.typed[column] === b.typed[column]);
}

/** Whether anything in the show's lists has a price. */
const hasPrices = ({ boards, glazing, backing, frames, papers, supplies }: Settings): boolean =>
	[boards, glazing, backing, frames, papers, supplies].some((list) => list.some(({ price }) => price !== undefined));
