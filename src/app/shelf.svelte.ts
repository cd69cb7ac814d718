import { newShow } from '../core/show/newShow.ts';
import { rename } from '../core/commands/rename.ts';
import { freeName } from '../core/device/shelf.ts';
import type { Show } from '../core/show/show.ts';
import { notDone } from '../core/device/storageProblem.ts';
import { makeId } from '../files/makeId.ts';
import type { ShelfStore, ShelvedShow } from '../storage/shelfStore.ts';
import { openShowStore } from '../storage/showStore.ts';
import type { LostShows } from './lostShows.svelte.ts';
import { listenToOtherTabs, type OtherTabs } from './otherTabs.ts';
import { oneForMany } from './oneForMany.ts';
import { openSession, type SessionOptions } from './openSession.ts';
import type { Session } from './session.svelte.ts';
import { closePicturesOf } from './pictures.svelte.ts';
import { PutAside } from './putAside.svelte.ts';
import { SecondCopying } from './secondCopies.ts';
import { rememberShowOfTab } from './tabShow.ts';

/** What was done to a show last, to be taken back. */
export interface ShelfStep {
	readonly did: 'archive' | 'delete';
	readonly id: string;
	readonly name: string;
}

/** What a shelf and its sessions are opened with. */
type ShelfOptions = SessionOptions & { readonly databaseName: string };

/** The shows on this device, and the one of them that is open in this tab. */
export class Shelf {
	#session = $state.raw<Session>()!;
	#shows = $state.raw<readonly ShelvedShow[]>([]);
	#isListed = $state(false);
	#last = $state.raw<ShelfStep>();
	#problem = $state.raw<string>();
	#acting: Promise<unknown> = Promise.resolve();
	readonly #options: ShelfOptions;
	readonly #store: ShelfStore;
	readonly #tabs: OtherTabs;
	/** The database that they are kept in. */
	readonly databaseName: string;
	/** The damaged records of this device. */
	readonly putAside: PutAside;
	/** The shows that the browser has lost. */
	readonly lost: LostShows;
	readonly #copying = new SecondCopying(this);

	/** Use `openShelf`. */
	constructor(session: Session, store: ShelfStore, lost: LostShows, options: ShelfOptions) {
		this.#session = session;
		this.#store = store;
		this.lost = lost;
		this.#options = options;
		this.databaseName = options.databaseName;
		this.putAside = new PutAside(this.databaseName);
		this.#tabs = listenToOtherTabs(this.databaseName, {
			onNews: () => void this.refresh(),
			onReturn: () => void this.refresh(),
		});
		rememberShowOfTab(session.show.id);
	}

	/** The show that is open. */
	get session(): Session {
		return this.#session;
	}

	/** Every show, the one opened last first; the deleted ones too. As they were when last looked at. */
	get shows(): readonly ShelvedShow[] {
		return this.#shows;
	}

	/** Whether what is kept has been looked at: the first screen comes before that. */
	get isListed(): boolean {
		return this.#isListed;
	}

	/** What can be taken back. */
	get last(): ShelfStep | undefined {
		return this.#last;
	}

	/** Why the last thing asked for could not be done. */
	get problem(): string | undefined {
		return this.#problem;
	}

	/** Whether the show that is open here has been deleted in another tab. */
	get isOpenDeleted(): boolean {
		return this.#shows.some(({ id, deletedAt }) => id === this.#session.show.id && deletedAt !== undefined);
	}

	/** What the columns of files mean, as it was said on this device. */
	get memory(): Pick<ShelfStore, 'matching' | 'keepMatching'> {
		return this.#store;
	}

	/** Looks at what is kept. */
	readonly refresh = oneForMany(() => this.#refresh());

	async #refresh(): Promise<void> {
		const shows = await this.#list().catch(() => undefined);
		if (shows) {
			this.#shows = shows.toSorted((a, b) => (b.openedAt ?? 0) - (a.openedAt ?? 0) || (a.id < b.id ? -1 : 1));
			this.lost.note(this.#shows);
			this.#copying.changed();
		}
		this.#isListed = true;
		await this.putAside.refresh();
	}

	/** Every show that is kept, with those that the browser has lost put back: it may do so while the page is open. */
	async #list(): Promise<readonly ShelvedShow[]> {
		const shows = await this.#store.list();
		const there = shows.map(({ id }) => id);
		return (await this.lost.find(there)) ? this.#store.list() : shows;
	}

	/** Opens another show in this tab, once all of this one is on disk. @returns whether it is open */
	open(id: string): Promise<boolean> {
		return this.#try(async () => {
			if (id === this.#session.show.id) return;
			await this.#session.whenSaved();
			const next = await openSession({ ...this.#options, showId: id });
			await this.#session.close().catch(async (cause: unknown) => {
				await next.close();
				throw cause;
			});
			this.#enter(next);
		});
	}

	/** Begins a show, in the unit of the one that is open. @returns its id; undefined where it could not be kept */
	create(): Promise<string | undefined> {
		return this.add([{ ...newShow('', this.session.settings.unit), name: this.freeName('New show') }]);
	}

	/** Copies a show with all that is in it, ticks too. */
	async copy(id: string): Promise<string | undefined> {
		let show: Show | undefined;
		const isRead = await this.#try(async () => void (show = await this.read(id)));
		return isRead && show ? this.add([{ ...show, name: this.freeName(`${show.name} copy`) }]) : undefined;
	}

	/** Puts shows on the shelf, under names of their own. @returns the id of the first */
	add(shows: readonly Omit<Show, 'id'>[], isArchived = false): Promise<string | undefined> {
		const { makeId: newId = makeId } = this.#options;
		const added = shows.map((show): Show => ({ ...show, id: newId() }));
		return this.keep(added, isArchived).then((isKept) => (isKept ? added[0]?.id : undefined));
	}

	/**
	 * Puts shows on the shelf that have ids.
	 * @param copiedAt when a file was read that holds them, in milliseconds since 1970
	 */
	keep(shows: readonly Show[], isArchived = false, copiedAt?: number): Promise<boolean> {
		const copied = copiedAt === undefined ? undefined : ({ at: copiedAt, revision: 1, what: 'show' } as const);
		return this.#try(() => this.#store.add(shows, { isArchived, ...(copied && { copied }) }));
	}

	/** Keeps that copies of shows have left that are not open here, and tells the tabs in which they are. */
	async noteCopied(shows: readonly ShelvedShow[], at: number): Promise<void> {
		const store = openShowStore(this.databaseName);
		try {
			for (const { id, revision } of shows) {
				const copied = { at, revision, what: 'show' } as const;
				await store.keepCopied(id, copied);
				this.#tabs.announce({ showId: id, revision, copied });
			}
		} finally {
			store.close();
		}
	}

	/** A name that no show has that is not deleted. */
	freeName(wanted: string): string {
		return freeName(
			wanted,
			this.#shows.flatMap(({ name, deletedAt }) => (deletedAt === undefined ? [name] : [])),
		);
	}

	/** Gives a show another name; the open one as an edit, which undo takes back. */
	rename(id: string, name: string): Promise<boolean> {
		return this.#try(async () => {
			if (id === this.#session.show.id) {
				this.#session.do((show) => rename(show, name, 'Rename show'));
				await this.#session.whenSaved();
				return;
			}
			const store = openShowStore(this.databaseName);
			try {
				const { show } = await store.read(id);
				const edit = rename(show, name, 'Rename show');
				const revision = await store.apply(id, edit);
				this.#tabs.announce({ showId: id, revision, edit });
			} finally {
				store.close();
			}
		});
	}

	/** Puts a show away, or back among the others. */
	archive(id: string, isArchived: boolean): Promise<boolean> {
		return this.#try(async () => {
			await this.#store.mark(id, { isArchived });
			this.#last = isArchived ? { did: 'archive', id, name: this.#nameOf(id) } : undefined;
		});
	}

	/** Deletes a show; it can be brought back for a while. In the place of the open one the one before it is opened. */
	delete(id: string): Promise<boolean> {
		return this.#try(async () => {
			const name = this.#nameOf(id);
			const isOpen = id === this.#session.show.id;
			const mark = async () => {
				await this.#store.mark(id, { deletedAt: Date.now() });
				this.#last = { did: 'delete', id, name };
			};
			if (!isOpen) return mark();
			let next: Session | undefined;
			// An edit that came after the mark would bring the show back: none is made from here on.
			await this.#session.close(async () => {
				await mark();
				next = await openSession({ ...this.#options, showId: undefined });
			});
			if (next) this.#enter(next);
		});
	}

	/** Has a session open in the place of the one that has been closed. */
	#enter(session: Session): void {
		this.#session = session;
		rememberShowOfTab(session.show.id);
	}

	/** Brings a deleted show back. */
	bringBack(id: string): Promise<boolean> {
		return this.#try(async () => {
			await this.#store.mark(id, { deletedAt: false });
			if (this.#last?.id === id) this.#last = undefined;
		});
	}

	/** Undoes what was done last. */
	undoStep(): Promise<boolean> {
		const last = this.#last;
		if (!last) return Promise.resolve(false);
		return last.did === 'delete' ? this.bringBack(last.id) : this.archive(last.id, false);
	}

	/** Lets go of the database, once all of the show that is open is on disk. */
	async close(): Promise<void> {
		await this.#session.close();
		this.#copying.close();
		this.#tabs.close();
		this.#store.close();
		this.putAside.close();
		closePicturesOf(this.databaseName);
	}

	/** A show as it is now, the deleted ones too; the open one as it is here. */
	read(id: string): Promise<Show> {
		const { show } = this.#session;
		return id === show.id ? Promise.resolve(show) : this.#store.read(id);
	}

	#nameOf(id: string): string {
		const { show } = this.#session;
		return id === show.id ? show.name : (this.#shows.find((each) => each.id === id)?.name ?? '');
	}

	/** Does one thing after the other: each may open another show in the place of the one that is open. */
	#try(act: () => Promise<void>): Promise<boolean> {
		const acted = this.#acting.then(() => this.#tryNow(act));
		this.#acting = acted;
		return acted;
	}

	async #tryNow(act: () => Promise<void>): Promise<boolean> {
		this.#problem = undefined;
		try {
			await act();
			return true;
		} catch (cause) {
			const { name, message } = cause as Error;
			this.#problem = name === 'Error' ? message : notDone(name);
			return false;
		} finally {
			await this.refresh();
			this.#tabs.announce({ showId: '', revision: 0 });
		}
	}
}
