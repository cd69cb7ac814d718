import {
	type Choices,
	chooseAll,
	chooseMerge,
	isOrderOpen,
	parted,
	sideOfCell,
	sideOfOrder,
	sideOfRow,
} from '../core/merge/choices.ts';
import type { Exchange } from '../core/merge/exchange.ts';
import { exchangedRows } from '../core/merge/exchangedRows.ts';
import { mergeEdit } from '../core/merge/mergeEdit.ts';
import { mergePrints } from '../core/merge/mergePrints.ts';
import {
	type CellDifference,
	type Merge,
	type RowDifference,
	type RowsThere,
	type Side,
} from '../core/merge/mergeRows.ts';
import { pinRow } from '../core/commands/pinRow.ts';
import { columns } from '../core/show/columns.ts';
import type { Row } from '../core/show/row.ts';
import { type Edit, isEmpty } from '../core/show/edit.ts';
import type { SettingsOfRows } from '../core/imports/settingsOfRows.ts';
import type { RowsOfFile } from '../files/csv.ts';
import { makeId } from '../files/makeId.ts';
import type { Step } from './history.svelte.ts';
import type { IncomingList } from './incoming.ts';
import type { Session } from './session.svelte.ts';

/** A file to be imported into the show that is open. */
export interface RowsToImport {
	readonly read: RowsOfFile;
	readonly fileName: string;
	/** How it is named in sentences. */
	readonly source: string;
	readonly label: string;
	/** How the settings that the file says differ from the show's. */
	readonly settings: SettingsOfRows | undefined;
	/** The list that it is, whose columns may be said again; undefined where it is a whole show. */
	readonly list?: IncomingList | undefined;
}

/** The comparison of a file with the show: what differs, and what is chosen. Nothing changes until it is imported. */
export class MergeReview {
	#merge = $state.raw<Merge>()!;
	#rows: Session['show']['rows'] = [];
	#settings: Session['settings'];
	readonly #readUnder: Session['settings'];
	#choices = $state.raw<Choices>(new Map());
	readonly file: RowsToImport;
	readonly #session: Session;
	readonly #exchanges: readonly Exchange[];

	constructor(session: Session, file: RowsToImport, exchanges: readonly Exchange[]) {
		this.#session = session;
		this.file = file;
		this.#exchanges = exchanges;
		this.#settings = this.#readUnder = session.settings;
		this.refresh();
	}

	get merge(): Merge {
		return this.#merge;
	}

	get choices(): Choices {
		return this.#choices;
	}

	/**
	 * Whether anything that is here might change or go, so that it has to be looked at first; or whether nothing of the
	 * file would come in, though it is not as the show is.
	 */
	get isToBeSeen(): boolean {
		const { rows, isComplete } = this.#merge;
		if (isOrderOpen(this.#merge)) return true;
		// What a spreadsheet has made of cells, and what may be no print, is said before anything comes in.
		if (parted(rows, 'aside').length > 0 || parted(rows, 'in doubt').length > 0) return true;
		// A list of some prints lacks the others, and nobody means that they should go.
		const isOpen = ({ kind }: RowDifference) => kind !== 'added' && (isComplete || kind !== 'removed there');
		if (parted(rows, 'theirs or both').some(isOpen)) return true;
		return parted(rows, 'only here').length > 0 && !rows.some(({ kind }) => kind === 'added');
	}

	/** Compares again where the show has changed since; what was chosen holds. */
	refresh(): void {
		const { show, settings } = this.#session;
		if (show.rows === this.#rows && settings === this.#settings) return;
		this.#rows = show.rows;
		this.#settings = settings;
		this.#merge = mergePrints(show.rows, this.#rowsThere(), this.#exchanges, settings, makeId);
	}

	/** The rows of the file; its lengths stay what they are where the show has got another unit since it was read. */
	#rowsThere(): RowsThere {
		const { read } = this.file;
		const { unit } = this.#settings;
		if (unit === this.#readUnder.unit) return read;
		return { ...read, rows: read.rows.map((row) => pinRow(row, this.#readUnder.unit, unit, this.#readUnder.sizes)) };
	}

	sideOfCell(row: RowDifference, cell: CellDifference): Side {
		return sideOfCell(row, cell, this.#merge, this.#choices);
	}

	sideOfRow(row: RowDifference): Side {
		return sideOfRow(row, this.#merge, this.#choices);
	}

	get sideOfOrder(): Side {
		return sideOfOrder(this.#choices);
	}

	/** Chooses for one cell, row or the order, by its key. */
	choose(key: string, side: Side): void {
		this.#choices = new Map([...this.#choices, [key, side]]);
	}

	/** Chooses one side for all that differs in these rows. */
	chooseRows(rows: readonly RowDifference[], side: Side): void {
		this.#choices = new Map([...this.#choices, ...chooseAll(rows, side)]);
	}

	/** Chooses theirs for all that they have changed, or yours for everything. */
	chooseEverything(side: Side): void {
		this.#choices = new Map([...this.#choices, ...chooseMerge(this.#merge, side)]);
	}

	/** Everything as it was suggested. */
	suggest(): void {
		this.#choices = new Map();
	}

	/** The exchange that the file is compared with, and the rows of the show that it is compared with. */
	get compared(): { readonly base: Exchange | undefined; readonly rows: Session['show']['rows'] } {
		return { base: this.#merge.base, rows: this.#rows };
	}

	/** The rows of the file as they were meant: without what a spreadsheet has made of them. */
	get meantRows(): readonly Row[] {
		return exchangedRows(this.#merge, new Map());
	}

	/** The edit that imports the file as chosen; on the show as it is now. */
	edit(): Edit {
		return mergeEdit(this.#rows, this.#merge, this.#choices, this.#settings, this.file.label);
	}

	/**
	 * Imports the file as chosen: one step to undo. What was exchanged is kept with it, so that the next file is compared
	 * with this one.
	 * @param edit the one that `edit` has given
	 * @param signal aborted where the import was cancelled: then nothing changes
	 * @returns the step; undefined where it changes nothing, or has to be asked about
	 */
	async import(edit: Edit, signal?: AbortSignal): Promise<Step | undefined> {
		const { columns: inFile } = this.file.read;
		const exchange: Exchange = {
			id: makeId(),
			direction: 'taken',
			fileName: this.file.fileName,
			at: Date.now(),
			unit: this.#settings.unit,
			...(columns.some(({ name }) => !inFile.includes(name)) && { columns: inFile }),
			rows: exchangedRows(this.#merge, this.#choices),
		};
		// Where it cannot be kept, the next file is compared with an older one: more is asked, and nothing is lost.
		await this.#session.exchanges.keep(exchange, isEmpty(edit)).catch(() => undefined);
		signal?.throwIfAborted(); // writing a long list is slow: it may have been cancelled meanwhile
		return this.#session.do(() => ({ ...edit, exchange: { after: exchange.id } }));
	}
}
