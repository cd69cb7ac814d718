import type { Page } from 'playwright-core';

/**
 * The words on the page that cannot be read: cut off at the side with nothing that scrolls there, clipped by what they
 * stand in without an ellipsis, under something else that can be pressed, or figures of a cell that run into the next one.
 * Empty where all of them can.
 */
export const lostText = (page: Page): Promise<string[]> =>
	page.evaluate(() => {
		const lost = new Set<string>();
		const root = document.documentElement;
		if (root.scrollWidth > innerWidth) lost.add(`the page scrolls sideways: ${root.scrollWidth} px`);
		const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
		for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
			const words = node.textContent!.trim();
			const parent = node.parentElement!;
			if (words === '' || parent.closest('svg, .heard, script, style, option, [aria-hidden=true]')) continue;
			if (!parent.checkVisibility({ visibilityProperty: true })) continue;
			const range = document.createRange();
			range.selectNodeContents(node);
			const box = range.getBoundingClientRect();
			if (box.width < 2) continue;
			let isReached = false;
			for (let each: HTMLElement | null = parent; each !== null && !isReached; each = each.parentElement) {
				const style = getComputedStyle(each);
				if (style.clipPath !== 'none' || style.textOverflow === 'ellipsis' || style.webkitLineClamp !== 'none') {
					isReached = true; // heard, or shortened on purpose
					continue;
				}
				if (style.overflowX === 'visible') continue;
				const within = each.getBoundingClientRect();
				if (style.overflowX === 'auto' || style.overflowX === 'scroll')
					isReached = each.scrollWidth > each.clientWidth + 1;
				else if (box.right > within.right + 2 || box.left < within.left - 2) {
					lost.add(`clipped: ${words.slice(0, 60)}`);
					isReached = true;
				}
			}
			if (!isReached && (box.right > innerWidth + 1 || box.left < -1))
				lost.add(`beside the page: ${words.slice(0, 60)}`);
		}
		for (const figure of document.querySelectorAll<HTMLElement>('[role=grid] .whole > :first-child')) {
			const range = document.createRange();
			range.selectNodeContents(figure);
			const [box, cell] = [range.getBoundingClientRect(), figure.parentElement!.getBoundingClientRect()];
			if (box.left < cell.left - 1 || box.right > cell.right + 1 || box.height > cell.height + 1)
				lost.add(`runs out of its cell: ${figure.innerText}`);
		}
		/** The part of a box that is seen within what scrolls round it. */
		const seenOf = (each: HTMLElement) => {
			let { left, right, top, bottom } = each.getBoundingClientRect();
			for (let round = each.parentElement; round !== null; round = round.parentElement) {
				if (getComputedStyle(round).overflowY === 'visible') continue;
				const within = round.getBoundingClientRect();
				[left, right] = [Math.max(left, within.left), Math.min(right, within.right)];
				[top, bottom] = [Math.max(top, within.top), Math.min(bottom, within.bottom)];
			}
			return { left, right, top, bottom };
		};
		/** At the foot of a phone: what is scrolled under it is not seen, and has to come out above it at the end. */
		const isAtFoot = (each: HTMLElement) =>
			[each, each.parentElement!].some((one) => getComputedStyle(one).position === 'fixed');
		const pressed = [
			...document.querySelectorAll<HTMLElement>(
				'main :is(button, a, input:not([type=radio], [type=checkbox]), select)',
			),
		]
			.filter((each) => each.checkVisibility({ visibilityProperty: true }))
			.filter((each) => each.closest('[role=grid], svg, [role=listbox], [role=menu], .foot, .keys') === null)
			.map((each) => ({ each, box: seenOf(each), atFoot: isAtFoot(each) }));
		const foot = Math.min(innerHeight, ...pressed.filter(({ atFoot }) => atFoot).map(({ box }) => box.top));
		const scroller = document.querySelector<HTMLElement>('.place');
		const further = scroller ? scroller.scrollHeight - scroller.clientHeight - scroller.scrollTop : 0;
		const scrollerOf = (each: HTMLElement) => {
			let round = each.parentElement;
			while (round !== null && !/auto|scroll/.test(getComputedStyle(round).overflowY)) round = round.parentElement;
			return round;
		};
		for (const { each, box, atFoot } of pressed) {
			if (atFoot) continue;
			if (scrollerOf(each) === scroller && each.getBoundingClientRect().bottom - further > foot)
				lost.add(`under the foot: ${each.innerText.slice(0, 30)}`);
			box.bottom = Math.min(box.bottom, foot);
		}
		pressed.forEach(({ each, box }, place) => {
			for (const { each: other, box: by } of pressed.slice(0, place)) {
				const across = Math.min(box.right, by.right) - Math.max(box.left, by.left);
				const down = Math.min(box.bottom, by.bottom) - Math.max(box.top, by.top);
				if (across > 2 && down > 2 && !each.contains(other) && !other.contains(each))
					lost.add(`on each other: ${other.innerText.slice(0, 30)} and ${each.innerText.slice(0, 30)}`);
			}
		});
		return [...lost];
	});

/** Makes all words larger, as somebody does in the settings of the browser: 2 for twice as large. */
export const enlargeText = (page: Page, times: number): Promise<void> =>
	page.evaluate((by) => void (document.documentElement.style.fontSize = by === 1 ? '' : `${by * 100}%`), times);
