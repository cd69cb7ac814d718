import { setTimeout as wait } from 'node:timers/promises';
import { clicking, type Key, pressing, typing } from './inputs.ts';
import type { Tab } from './tab.ts';

/** What is looked for in a page: what a selector finds and is seen, and is called so, where a name is given. */
export interface Wanted {
	readonly selector: string;
	/** What it says, or what it is called for those who hear it. */
	readonly name?: string | RegExp;
}

/** What is seen of something in the page. */
interface Seen {
	/** What it says, blanks drawn together. */
	readonly text: string;
	/** The middle of it, in the window. */
	readonly x: number;
	readonly y: number;
}

/** How long something may take to appear, on a machine with much else to do. */
const patienceMs = 90_000;

/** Runs in the page: everything that is wanted and seen. */
function look({
	selector,
	name,
	flags,
	isScrolled,
}: {
	selector: string;
	name: string;
	flags: string;
	isScrolled: boolean;
}) {
	const plain = (text: string | null) => (text ?? '').replace(/\s+/g, ' ').trim();
	const called = new RegExp(name, flags);
	return [...document.querySelectorAll<HTMLElement>(selector)]
		.filter((element) => element.getClientRects().length > 0)
		.filter((element) => called.test(plain(element.getAttribute('aria-label') ?? element.textContent)))
		.map((element, place) => {
			if (isScrolled && place === 0) element.scrollIntoView({ block: 'center', inline: 'nearest' });
			const { left, top, width, height } = element.getBoundingClientRect();
			return { text: plain(element.textContent), x: left + width / 2, y: top + height / 2 };
		});
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** What a person does and sees in a window of any browser. */
export class Person {
	readonly #tab: Tab;

	constructor(tab: Tab) {
		this.#tab = tab;
	}

	/** All that is seen of what is wanted, now. */
	see({ selector, name = '' }: Wanted, isScrolled = false): Promise<readonly Seen[]> {
		const [source, flags] = typeof name === 'string' ? [name && `^${escaped(name)}$`, ''] : [name.source, name.flags];
		return this.#tab.ask(look, { selector, name: source, flags, isScrolled });
	}

	/** Waits until what is wanted is seen, `count` times. @returns the first of it */
	async waitFor(wanted: Wanted, count?: number): Promise<Seen> {
		let seen: readonly Seen[] = [];
		for (const until = Date.now() + patienceMs; Date.now() < until; await wait(100)) {
			seen = await this.see(wanted);
			if (count === undefined ? seen.length > 0 : seen.length === count) return seen[0] ?? { text: '', x: 0, y: 0 };
		}
		const page = await this.#tab.ask(() => document.body.innerText.slice(0, 3000), undefined);
		const problems = await this.#tab.problems();
		const { selector, name = '' } = wanted;
		throw new Error(
			`${selector} ${String(name)} is seen ${seen.length} times, not ${count ?? 'once'}. ${problems.join('; ')}\nThe page says:\n${page}`,
		);
	}

	/** Clicks on the first of what is wanted, once it is there and lies still. */
	async click(wanted: Wanted): Promise<void> {
		await this.waitFor(wanted);
		let [last] = await this.see(wanted, true);
		for (const until = Date.now() + patienceMs; Date.now() < until;) {
			await wait(50);
			const [now] = await this.see(wanted);
			if (now && last && now.x === last.x && now.y === last.y) return this.#tab.perform(clicking(now.x, now.y));
			last = now;
		}
		throw new Error(`${wanted.selector} ${String(wanted.name)} never lies still`);
	}

	/** Types a text into what has the focus. */
	type(text: string): Promise<void> {
		return this.#tab.perform(typing(text));
	}

	/** Presses keys together. */
	press(...chord: readonly Key[]): Promise<void> {
		return this.#tab.perform(pressing(...chord));
	}
}
