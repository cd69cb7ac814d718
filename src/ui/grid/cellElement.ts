import { pictureColumn } from '../../core/grid/resolutionColumn.ts';
import type { Level } from '../../core/findings/finding.ts';
import { levelShapes, levelSize } from '../findings/levelShapes.ts';
import { fractions } from '../length/fractionParts.ts';
import type { RowCell } from './rowCells.ts';

/**
 * A cell of the grid in the page. Only what differs from what it showed is written, by hand: small effects for each part
 * of each cell took as long as all else that a key does.
 */
export class CellElement {
	readonly element = made('div');
	readonly #text = made('span');
	/** What is heard besides the text, and the mark of a finding. */
	#more: readonly Element[] = [];
	#shown: RowCell | undefined;

	constructor() {
		this.element.append(this.#text);
	}

	/** @param wordsId names the words that describe the active cell */
	draw(cell: RowCell, wordsId: string): void {
		const [{ element }, former] = [this, this.#shown];
		if (cell === former) return;
		this.#shown = cell;
		const { row, column, place, isActive, isEdited } = cell;
		if (column !== former?.column || place !== former.place) {
			element.role = column.isFrozen ? 'rowheader' : 'gridcell';
			say(element, {
				'aria-colindex': column.truePlace,
				'aria-readonly': column.column === undefined,
				'data-column': place,
			});
			element.style.gridColumn = `${place + 2}`;
		}
		const name = nameOf(cell);
		if (name !== element.className) element.className = name;
		say(element, {
			'data-row': row,
			'aria-selected': cell.isSelected,
			'aria-invalid': cell.isUnread || undefined,
			'aria-describedby': isActive ? wordsId : undefined,
		});
		const tabIndex = isActive && !isEdited ? 0 : -1;
		// Written again, it would have the browser find out at once whether the cell can still have the focus.
		if (!former || element.tabIndex !== tabIndex) element.tabIndex = tabIndex;
		if (column.key !== pictureColumn) this.#showText(cell, former);
		else if (cell.address !== former?.address)
			this.#text.replaceChildren(
				...(cell.address ? [made('img', { src: cell.address, alt: 'there is one', decoding: 'async' })] : []),
			);
	}

	/** An editor stands in the place of all of it. */
	#showText(cell: RowCell, former: RowCell | undefined): void {
		const { column, isEdited, level } = cell;
		const text = isEdited ? '' : cell.text;
		this.#text.className = cell.state.replace(' ', '-');
		// Fractions are drawn as such, and heard and copied as typed.
		if (text !== this.#text.textContent)
			this.#text.replaceChildren(
				...(column.isFigure ? text.split(fractions) : [text]).map((part, place) =>
					place % 2 === 0 ? part : made('span', { className: 'fraction', textContent: part }),
				),
			);
		const heard = isEdited || cell.heard === '' ? '' : text === '' ? cell.heard : `, ${cell.heard}`;
		if (heard === (this.#more[0]?.textContent ?? '') && level === former?.level) return;
		for (const element of this.#more) element.remove();
		this.#more =
			heard === '' ? [] : [made('span', { className: 'heard', textContent: heard }), ...(level ? [markOf(level)] : [])];
		this.#text.after(...this.#more);
	}
}

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

function say(element: Element, attributes: Attributes): void {
	for (const [name, value] of Object.entries(attributes))
		if (value === undefined) element.removeAttribute(name);
		else if (element.getAttribute(name) !== `${value}`) element.setAttribute(name, `${value}`);
}

function nameOf({ column, isActive, isSelected, isDrawn, isUnread, level }: RowCell): string {
	const names = [
		'cell',
		column.isFrozen && `frozen ${column.key}`,
		column.key === pictureColumn && column.key,
		column.isFigure && (isUnread ? 'figure' : 'figure whole'),
		column.isFirst && 'first',
		isActive && 'active',
		isSelected && 'selected',
		isDrawn && 'drawn',
		level && 'marked',
	];
	return names.filter(Boolean).join(' ');
}

const made = <Tag extends 'div' | 'span' | 'img'>(tag: Tag, properties: Partial<HTMLElementTagNameMap[Tag]> = {}) =>
	Object.assign(document.createElement(tag), properties);

function drawn(tag: string, attributes: Attributes): Element {
	const element = document.createElementNS('http://www.w3.org/2000/svg', tag);
	say(element, attributes);
	return element;
}

function markOf(level: Level): Element {
	const shape = drawn('path', { d: levelShapes[level] });
	const mark = drawn('svg', { class: `level-mark ${level}`, width: levelSize, height: levelSize, 'aria-hidden': true });
	mark.append(shape);
	return mark;
}
