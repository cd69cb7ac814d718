import { costReason, printCosts } from '../core/order/printCosts.ts';
import type { ToGet } from '../core/order/whatToGet.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { Row } from '../core/show/row.ts';

/** Pause after a change before costs are worked out anew, in milliseconds: nothing of it is done between two keystrokes. */
const pauseMs = 400;

interface Made {
	readonly toGet: ToGet;
	readonly places: ReadonlyMap<Row, number>;
	readonly costs: readonly (number | undefined)[];
}

/** What costs follow from. */
export interface CostsSource {
	readonly rows: readonly Row[];
	readonly settings: Settings;
	readonly toGet: () => ToGet;
}

/**
 * What each print costs, as it was when typing last paused, by the plans that there were. A row that has changed since has
 * no cost until then; in a show without prices nothing is worked out.
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
		const place = this.#made?.places.get(row);
		return place === undefined ? undefined : this.#made?.costs[place];
	}

	/** Why a print costs what it does, in sentences. */
	reasonOf(row: Row, settings: Settings): string | undefined {
		const place = this.#made?.places.get(row);
		return place === undefined ? undefined : costReason(this.#made!.toGet, place, settings.currency);
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
		const { rows, settings, toGet: read } = this.#read();
		if (!hasPrices(settings)) {
			this.#made = undefined;
			return;
		}
		const toGet = read();
		const places = new Map(rows.map((row, place) => [row, place]));
		this.#made = { toGet, places, costs: printCosts(toGet) };
	}

	/** Ends everything. */
	stop(): void {
		clearTimeout(this.#timer);
		this.#read = undefined;
	}
}

/** Whether anything in the show's lists has a price. */
const hasPrices = ({ boards, glazing, backing, frames, papers, supplies }: Settings): boolean =>
	[boards, glazing, backing, frames, papers, supplies].some((list) => list.some(({ price }) => price !== undefined));
