import type { BottomWeight } from '../../../../src/core/length/bottomWeight.ts';
import type { Length } from '../../../../src/core/length/length.ts';
import { type Cells, type SizeKey, sizeKeys } from '../../../../src/core/row/cells.ts';
import type { SolvedKey } from '../../../../src/core/row/solvedRow.ts';
import type { Settings } from '../../../../src/core/settings/settings.ts';
import { type Exact, exact, LinearSystem, type Terms } from './linearSystem.ts';

/** How an axis of a row comes out. */
type Outcome = 'fits' | 'conflict' | 'does not fit' | 'open';

/** A row as the second program works it out, in units of a length. */
export interface ReferenceRow {
	readonly solved: Partial<Record<SolvedKey, bigint>>;
	readonly width: Outcome;
	readonly height: Outcome;
}

type System = LinearSystem<SizeKey>;
type Axis = 'width' | 'height';
const axes = ['width', 'height'] as const;

const micron = 10_000n;

const keysOf = {
	width: ['mountWidth', 'windowWidth', 'pictureWidth', 'side'],
	height: ['mountHeight', 'windowHeight', 'pictureHeight', 'top', 'bottom'],
} as const satisfies Record<Axis, readonly SizeKey[]>;
const mountKey = { width: 'mountWidth', height: 'mountHeight' } as const;
const windowKey = { width: 'windowWidth', height: 'windowHeight' } as const;
const pictureKey = { width: 'pictureWidth', height: 'pictureHeight' } as const;
const borders: readonly SizeKey[] = ['side', 'top', 'bottom'];

const one = exact(1n);
const whole = (value: Length | bigint): Exact => exact(BigInt(value));
const isKnown = (value: Exact | undefined): value is Exact => value !== undefined;

/**
 * The rules of a row once more, by another way than the program's: each rule is linear equations, put to the ones before
 * it in exact fractions and left out where they then could not all be true. It is slow, and only the tests have it.
 */
export function referenceRow(cells: Cells, settings: Settings): ReferenceRow {
	return withoutWhatIsShown(cells, settings, new Map());
}

const shownCells = ['side', 'top', 'bottom', 'windowWidth', 'windowHeight'] as const;

function withoutWhatIsShown(cells: Cells, settings: Settings, known: Map<string, ReferenceRow>): ReferenceRow {
	const name = shownCells.filter((key) => cells[key] !== undefined).join();
	const before = known.get(name);
	if (before) return before;
	let rest = cells;
	for (const key of shownCells) {
		const typed = rest[key];
		if (typed === undefined) continue;
		const blank = { ...rest, [key]: undefined };
		const shown = withoutWhatIsShown(blank, settings, known).solved[key];
		if (shown !== undefined && distance(shown, BigInt(typed)) <= micron) rest = blank;
	}
	const row = rest === cells ? byRules(cells, settings) : withoutWhatIsShown(rest, settings, known);
	const kept = Object.fromEntries(
		shownCells.flatMap((key) => (cells[key] === undefined ? [] : [[key, BigInt(cells[key])]])),
	);
	const answer = { ...row, solved: cells.mount.kind === 'none' ? row.solved : { ...row.solved, ...kept } };
	known.set(name, answer);
	return answer;
}

const distance = (a: bigint, b: bigint) => (a > b ? a - b : b - a);

/** What the window adds to the picture, and which axes cover. */
function coverOf(cells: Cells, settings: Settings) {
	const positive = (value: Length | undefined) => (value !== undefined && value > 0 ? BigInt(value) : undefined);
	const ownReveal = positive(cells.reveal);
	const isShowsReveal = cells.reveal === undefined && cells.overlap === undefined;
	const reveal = ownReveal ?? (isShowsReveal ? positive(settings.reveal) : undefined);
	const overlap = BigInt(cells.overlap ?? settings.overlap);
	const signing = positive(cells.signingSpace) ?? 0n;
	const inner = 2n * BigInt(cells.innerMount ?? 0);
	const isBlank = cells.overlap === undefined && ownReveal === undefined && signing === 0n;
	const asked = {
		width: reveal === undefined ? -2n * overlap : 2n * reveal,
		height: reveal === undefined ? (signing > 0n ? signing - overlap : -2n * overlap) : 2n * reveal + signing,
	};
	const added = (axis: Axis) => {
		const [picture, window] = [cells[pictureKey[axis]], cells[windowKey[axis]]];
		return isBlank && picture !== undefined && window !== undefined
			? BigInt(window) - BigInt(picture)
			: asked[axis] + inner;
	};
	return {
		width: added('width'),
		height: added('height'),
		covers: { width: reveal === undefined, height: reveal === undefined && signing === 0n },
		reveal,
		overlap,
		signing,
		inner,
	};
}

type Cover = ReturnType<typeof coverOf>;

interface Start {
	readonly system: System;
	readonly agrees: Record<Axis, boolean>;
	readonly typed: Partial<Record<SizeKey, bigint>>;
}

/** Rules 1 to 3, with a size that counts as typed if there is one. */
function startOf(cells: Cells, cover: Cover, named?: Way): Start {
	const typed: Partial<Record<SizeKey, bigint>> = {};
	for (const key of sizeKeys) if (cells[key] !== undefined) typed[key] = BigInt(cells[key]);
	const sums = {
		width: [
			{ terms: { mountWidth: one, side: exact(-2n), windowWidth: exact(-1n) }, sum: exact(0n) },
			{ terms: { windowWidth: one, pictureWidth: exact(-1n) }, sum: exact(cover.width) },
		],
		height: [
			{
				terms: { mountHeight: one, top: exact(-1n), bottom: exact(-1n), windowHeight: exact(-1n) },
				sum: exact(0n),
			},
			{ terms: { windowHeight: one, pictureHeight: exact(-1n) }, sum: exact(cover.height) },
		],
	};
	let system: System = new LinearSystem<SizeKey>();
	const agrees = { width: true, height: true };
	for (const axis of axes) {
		const facts = keysOf[axis].flatMap((key) => (typed[key] === undefined ? [] : [isJust(key, exact(typed[key]))]));
		if (named) facts.push(isJust(mountKey[axis], exact(named[axis])));
		const next = system.with([...sums[axis], ...facts]);
		agrees[axis] = next !== undefined;
		system = next ?? system;
		if (named) typed[mountKey[axis]] ??= named[axis];
	}
	const { shape } = cells;
	if (!shape) return { system, agrees, typed };
	const ratio = exact(BigInt(shape.numerator), BigInt(shape.denominator));
	if (agrees.width && agrees.height) {
		const shaped = system.with([{ terms: { pictureWidth: one, pictureHeight: ratio.times(-1n) }, sum: exact(0n) }]);
		return { system: shaped ?? system, agrees, typed };
	}
	if (agrees.height && typed.pictureWidth !== undefined)
		system = system.with([isJust('pictureHeight', exact(typed.pictureWidth).over(ratio))]) ?? system;
	if (agrees.width && typed.pictureHeight !== undefined)
		system = system.with([isJust('pictureWidth', exact(typed.pictureHeight).by(ratio))]) ?? system;
	return { system, agrees, typed };
}

const isJust = (key: SizeKey, sum: Exact): { terms: Terms<SizeKey>; sum: Exact } => ({ terms: { [key]: one }, sum });

interface Way {
	readonly width: bigint;
	readonly height: bigint;
}

/** A size as the picture lies, then turned. */
function waysOf(size: { width: Length; height: Length }, { system, typed }: Start, cells: Cells): readonly Way[] {
	const given = { width: BigInt(size.width), height: BigInt(size.height) };
	const turned = { width: given.height, height: given.width };
	const known = (key: SizeKey) => system.value(key) ?? (typed[key] === undefined ? undefined : exact(typed[key]));
	const wideBy = (keys: Record<Axis, SizeKey>) => {
		const [width, height] = [known(keys.width), known(keys.height)];
		return isKnown(width) && isKnown(height) ? width.compare(height) : undefined;
	};
	const byShape = cells.shape ? Math.sign(cells.shape.numerator - cells.shape.denominator) : 0;
	const wide = wideBy(pictureKey) ?? wideBy(windowKey) ?? byShape;
	const isAsGiven = wide === 0 || (wide > 0 ? given.width >= given.height : given.width < given.height);
	return isAsGiven ? [given, turned] : [turned, given];
}

function hasRoom(before: System, after: System, settings: Settings): boolean {
	const graduation = BigInt(settings.ruler);
	const settled = (terms: Terms<SizeKey>) => (before.valueOf(terms) === undefined ? after.valueOf(terms) : undefined);
	const isUnder = (terms: Terms<SizeKey>, least: bigint) => {
		const value = settled(terms);
		return isKnown(value) && value.compare(exact(least)) < 0;
	};
	return (
		borders.every((key) => !isUnder({ [key]: one }, graduation - micron)) &&
		axes.every(
			(axis) =>
				!isUnder({ [mountKey[axis]]: one, [windowKey[axis]]: exact(-1n) }, 2n * (graduation - micron)) &&
				!isUnder({ [windowKey[axis]]: one }, 1n) &&
				!isUnder({ [pictureKey[axis]]: one }, 1n),
		)
	);
}

/** Rule 4. */
function withMount(cells: Cells, cover: Cover, settings: Settings): Start & { readonly isShows: boolean } {
	const start = startOf(cells, cover);
	const weighted = (system: System, { height }: Record<Axis, boolean>) =>
		height ? withWeight(system, cells, settings) : system;
	if (cells.mount.kind === 'size') {
		const tries = waysOf(cells.mount.size, start, cells).map((way) => ({ way, ...startOf(cells, cover, way) }));
		const isTypedSo = (way: Way) =>
			axes.every((axis) => {
				const side = cells[mountKey[axis]];
				return side === undefined || distance(BigInt(side), way[axis]) <= micron;
			});
		const agreeing = tries.filter(
			({ way, agrees }) => isTypedSo(way) && axes.every((axis) => agrees[axis] || !start.agrees[axis]),
		);
		const roomy = agreeing.find(({ system, agrees }) => hasRoom(start.system, weighted(system, agrees), settings));
		return { ...(roomy ?? agreeing[0] ?? tries[0]!), isShows: false };
	}
	if (cells.mount.kind !== 'show' || !settings.mountSize) return { ...start, isShows: false };
	for (const way of waysOf(settings.mountSize, start, cells)) {
		const isOff = axes.some((axis) => {
			const side = start.typed[mountKey[axis]];
			return !start.agrees[axis] && side !== undefined && distance(side, way[axis]) > micron;
		});
		if (isOff) continue;
		const taking = axes.filter((axis) => start.agrees[axis]);
		const system = start.system.with(taking.map((axis) => isJust(mountKey[axis], exact(way[axis]))));
		if (system && hasRoom(start.system, weighted(system, start.agrees), settings))
			return { ...start, system, isShows: true };
	}
	return { ...start, isShows: false };
}

interface Weight {
	readonly times: Exact;
	readonly more: bigint;
}

function givenWeight(weight: BottomWeight): Weight | undefined {
	if (weight.kind === 'length') return { times: one, more: BigInt(weight.more) };
	if (weight.kind === 'optical centre') return undefined;
	const [part, of] = [BigInt(weight.numerator), BigInt(weight.denominator)];
	return { times: exact(of + part, of), more: 0n };
}

const noWeight: Weight = { times: one, more: 0n };

/** Rule 5. */
function withWeight(system: System, cells: Cells, settings: Settings): System {
	const asked = cells.bottomWeight ?? settings.bottomWeight;
	const weight = givenWeight(asked) ?? opticalCentre(system, cells, settings);
	const put = ({ times, more }: Weight) =>
		system.with([{ terms: { bottom: one, top: times.times(-1n) }, sum: exact(more) }]);
	const weighted = put(weight);
	if (!weighted) return system;
	const isNothing = [weighted.value('top'), weighted.value('bottom')].some(
		(value) => isKnown(value) && value.sign <= 0,
	);
	return isNothing ? (put(noWeight) ?? system) : weighted;
}

function opticalCentre(system: System, cells: Cells, settings: Settings): Weight {
	const isWidthKnown = isKnown(system.value('mountWidth')) && isKnown(system.value('windowWidth'));
	const at = isWidthKnown ? system : system.with([isJust('side', borderOf(cells, settings))]);
	const [mount, window] = [at?.value('mountWidth'), at?.value('windowWidth')];
	if (!isKnown(mount) || !isKnown(window) || mount.plus(window).sign === 0) return noWeight;
	// 1 + k = 1/c − 1
	const times = mount.times(4n).over(mount.plus(window)).plus(exact(-1n));
	return times.sign > 0 ? { times, more: 0n } : noWeight;
}

/** The border that a row starts from. */
function borderOf(cells: Cells, settings: Settings): Exact {
	if (cells.side !== undefined) return whole(cells.side);
	if (cells.top !== undefined) return whole(cells.top);
	const weight = givenWeight(cells.bottomWeight ?? settings.bottomWeight);
	if (cells.bottom !== undefined && weight) {
		const top = exact(BigInt(cells.bottom) - weight.more).over(weight.times);
		return top.sign > 0 ? top : whole(cells.bottom);
	}
	return exact(upTo(whole(settings.border), BigInt(settings.ruler)));
}

/** Rule 6. */
function withBorder(system: System, agrees: Record<Axis, boolean>, border: Exact): System {
	const open = axes.filter((axis) => agrees[axis] && keysOf[axis].some((key) => !isKnown(system.value(key))));
	if (open.length === 0) return system;
	const put = (keys: readonly SizeKey[]) => {
		const taking = keys.filter((key) => agrees[key === 'side' ? 'width' : 'height']);
		if (taking.length === 0) return undefined;
		const next = system.with(taking.map((key) => isJust(key, border)));
		const isRoomy = sizeKeys.every((key) => {
			const value = isKnown(system.value(key)) ? undefined : next?.value(key);
			return !isKnown(value) || value.sign > 0;
		});
		return isRoomy ? next : undefined;
	};
	const leaves = (next: System | undefined, key: SizeKey) => {
		const value = next?.value(key);
		return isKnown(value) && value.compare(border.plus(exact(-micron))) >= 0;
	};
	const both = put(['side', 'top']);
	if (both) return both;
	const [bySide, byTop] = [put(['side']), put(['top'])];
	if (leaves(bySide, 'top')) return bySide!;
	if (leaves(byTop, 'side')) return byTop!;
	return bySide ?? byTop ?? system;
}

function byRules(cells: Cells, settings: Settings): ReferenceRow {
	if (cells.isFloat) return floating(cells, settings);
	const row = mounted(cells, coverOf(cells, settings), settings);
	return cells.mount.kind === 'none' ? row : onPaper(row, cells, settings);
}

/** A paper as it lies, and what of it the printer and what must show leave: of a picture that is so wide and so high. */
function printableOf(
	paper: NonNullable<Cells['paper']>,
	wide: number,
	cover: Cover | undefined,
	settings: Settings,
): Way {
	const big = (value: Length | undefined) => BigInt(value ?? 0);
	const most = (a: bigint, b: bigint) => (a > b ? a : b);
	const across = big(paper.width);
	const along = big(paper.height ?? paper.roll);
	const [short, long] = across < along ? [across, along] : [along, across];
	// A sheet lies with its long side along the picture's; a roll with its width along the picture's shorter side.
	const isSquare = distance(across, along) <= micron;
	const sheet = wide === 0 || isSquare ? [across, along] : wide > 0 ? [long, short] : [short, long];
	const roll = wide > 0 ? [along, across] : [across, along];
	const [width, height] = paper.height === undefined ? roll : sheet;
	const margin = big(paper.margin);
	const hinge = big(settings.hingeMargin);
	const shows = cover?.reveal;
	const space = cover?.signing ?? 0n;
	const beside = shows === undefined ? margin : most(margin, shows + hinge);
	const below = shows === undefined && space === 0n ? margin : most(margin, (shows ?? 0n) + space + hinge);
	return { width: width! - 2n * beside, height: height! - 2n * below };
}

/** Rule 7. */
function onPaper(row: ReferenceRow, cells: Cells, settings: Settings): ReferenceRow {
	const typed = [cells.pictureWidth, cells.pictureHeight, cells.windowWidth, cells.windowHeight];
	const { pictureWidth: width, pictureHeight: height } = row.solved;
	if (!cells.paper || typed.some((side) => side !== undefined)) return row;
	if (width === undefined || height === undefined || row.width !== 'fits' || row.height !== 'fits') return row;
	const wide = distance(width, height) <= micron ? 0 : width > height ? 1 : -1;
	const most = printableOf(cells.paper, wide, coverOf(cells, settings), settings);
	const isOver = { width: width > most.width + micron, height: height > most.height + micron };
	if ((!isOver.width && !isOver.height) || most.width <= 0n || most.height <= 0n) return row;
	const isWidthWorse = exact(width, most.width).compare(exact(height, most.height)) >= 0;
	const setting = cells.shape ? { width: isWidthWorse, height: !isWidthWorse } : isOver;
	const withPicture = (sides: Partial<Way>) => {
		const typedSide = (side: bigint | undefined) => (side === undefined ? undefined : (Number(side) as Length));
		const picture = { pictureWidth: typedSide(sides.width), pictureHeight: typedSide(sides.height) };
		return referenceRow({ ...cells, ...picture }, settings);
	};
	const was: Way = { width, height };
	let sides: Partial<Way> = Object.fromEntries(axes.filter((axis) => setting[axis]).map((axis) => [axis, most[axis]]));
	let tried = withPicture(sides);
	// Whichever side would be larger than it was stays as it was.
	for (const axis of axes) {
		const side = tried.solved[pictureKey[axis]];
		if (sides[axis] !== undefined || side === undefined || side <= was[axis] + micron) continue;
		sides = { ...sides, [axis]: was[axis] };
		tried = withPicture(sides);
	}
	return tried.width === 'fits' && tried.height === 'fits' ? tried : row;
}

/** A float: the paper, or the picture without one, stands where the window would. */
function floating(cells: Cells, settings: Settings): ReferenceRow {
	const { shape, paper } = cells;
	const ratio = shape && exact(BigInt(shape.numerator), BigInt(shape.denominator));
	let width = cells.pictureWidth === undefined ? undefined : BigInt(cells.pictureWidth);
	let height = cells.pictureHeight === undefined ? undefined : BigInt(cells.pictureHeight);
	const wideBy = (a: bigint, b: bigint) => (distance(a, b) <= micron ? 0 : a > b ? 1 : -1);
	if (ratio && width === undefined && height === undefined && paper) {
		const most = printableOf(paper, Math.sign(shape.numerator - shape.denominator), undefined, settings);
		if (most.width > 0n && most.height > 0n) {
			const isByWidth = exact(most.width).over(ratio).floor() <= most.height;
			if (isByWidth) width = most.width;
			else height = most.height;
		}
	}
	if (ratio && width !== undefined) height ??= exact(width).over(ratio).floor();
	if (ratio && height !== undefined) width ??= exact(height).by(ratio).floor();
	const hasPicture = width !== undefined && height !== undefined && width > 0n && height > 0n;
	let place = hasPicture ? { width: width!, height: height! } : undefined;
	if (paper) {
		const wide = place ? wideBy(place.width, place.height) : shape ? Math.sign(shape.numerator - shape.denominator) : 0;
		const bare = printableOf({ ...paper, margin: 0 as Length }, wide, undefined, settings);
		if (paper.height !== undefined) place = { width: bare.width, height: bare.height };
		else if (place) {
			const more = 2n * BigInt(paper.margin);
			place =
				wide > 0
					? { width: place.width + more, height: bare.height }
					: { width: bare.width, height: place.height + more };
		}
	}
	const isOpen = paper !== undefined && place !== undefined && !hasPicture;
	const asLength = (value: bigint | undefined) => (value === undefined ? undefined : (Number(value) as Length));
	const stands: Cells =
		place === undefined
			? cells
			: {
					...cells,
					windowWidth: asLength(place.width),
					windowHeight: asLength(place.height),
					pictureWidth: hasPicture ? asLength(width) : undefined,
					pictureHeight: hasPicture ? asLength(height) : undefined,
					shape: isOpen ? undefined : shape,
				};
	const cover: Cover = {
		width: place && hasPicture ? place.width - width! : 0n,
		height: place && hasPicture ? place.height - height! : 0n,
		covers: { width: false, height: false },
		reveal: undefined,
		overlap: 0n,
		signing: 0n,
		inner: 0n,
	};
	const row = mounted(stands, cover, settings);
	const none: readonly string[] = ['windowWidth', 'windowHeight', 'overlapSide', 'overlapTop', 'overlapBottom'];
	const solved: Partial<Record<SolvedKey, bigint | undefined>> = Object.fromEntries(
		Object.entries(row.solved).filter(([key]) => !none.includes(key)),
	);
	const outcomes = { width: row.width, height: row.height };
	for (const axis of axes) {
		if (!isOpen && outcomes[axis] === 'fits') continue;
		const own = cells[pictureKey[axis]];
		solved[pictureKey[axis]] = own === undefined ? undefined : BigInt(own);
		if (own === undefined && outcomes[axis] === 'fits') outcomes[axis] = 'open';
	}
	return { solved: withoutBlanks(solved), ...outcomes };
}

function mounted(cells: Cells, cover: Cover, settings: Settings): ReferenceRow {
	if (cells.mount.kind === 'none') {
		const picture = pictureOf(cells, cover, {});
		const outcome = (side: bigint | undefined): Outcome => (side === undefined ? 'open' : 'fits');
		return {
			solved: withoutBlanks({ pictureWidth: picture.width, pictureHeight: picture.height }),
			width: outcome(picture.width),
			height: outcome(picture.height),
		};
	}
	const start = withMount(cells, cover, settings);
	const { agrees, typed, isShows } = start;
	const weighted = agrees.height ? withWeight(start.system, cells, settings) : start.system;
	const border = borderOf(cells, settings);
	const system = withBorder(weighted, agrees, border);
	let anyhow = system;
	if (agrees.width) anyhow = anyhow.with([isJust('side', border)]) ?? anyhow;
	if (agrees.height) anyhow = anyhow.with([isJust('top', border)]) ?? anyhow;

	const outcome = (axis: Axis): Outcome => {
		if (!agrees[axis]) return 'conflict';
		const values = keysOf[axis].map((key) => system.value(key));
		if (values.some((value) => isKnown(value) && value.sign <= 0)) return 'does not fit';
		if (values.every(isKnown)) return 'fits';
		return keysOf[axis].every((key) => isKnown(anyhow.value(key))) ? 'does not fit' : 'open';
	};
	const outcomes = { width: outcome('width'), height: outcome('height') };
	const stands = (axis: Axis) => isShows || typed[mountKey[axis]] !== undefined;
	const cut = {
		width: outcomes.width === 'fits' ? cutWidth(cells, cover, system, stands('width'), settings) : undefined,
		height: outcomes.height === 'fits' ? cutHeight(cells, cover, system, stands('height'), settings) : undefined,
	};
	const windows = () => ({ width: cut.width?.windowWidth, height: cut.height?.windowHeight });
	let picture = pictureOf(cells, cover, windows());
	for (const axis of axes) {
		if (outcomes[axis] !== 'fits' || [...Object.values(cut[axis]!), picture[axis]!].every((value) => value > 0n))
			continue;
		outcomes[axis] = 'does not fit';
		cut[axis] = undefined;
	}
	picture = pictureOf(cells, cover, windows());
	const solved: Partial<Record<SolvedKey, bigint | undefined>> = { ...typed };
	if (outcomes.width === 'open') Object.assign(solved, openBorders(cells, system, ['side'], settings));
	if (outcomes.height === 'open') Object.assign(solved, openBorders(cells, system, ['top', 'bottom'], settings));
	for (const axis of axes)
		if (outcomes[axis] === 'fits') Object.assign(solved, cut[axis], { [pictureKey[axis]]: picture[axis] });
	return { solved: withoutBlanks({ ...solved, ...coveredBy(solved, outcomes, cover) }), ...outcomes };
}

const withoutBlanks = (solved: Partial<Record<SolvedKey, bigint | undefined>>) =>
	Object.fromEntries(Object.entries(solved).filter(([, value]) => value !== undefined)) as ReferenceRow['solved'];

/** The borders of an open axis, as far as they are known. */
function openBorders(cells: Cells, system: System, keys: readonly ('side' | 'top' | 'bottom')[], { ruler }: Settings) {
	const shown: Partial<Record<SolvedKey, bigint>> = {};
	for (const key of keys) {
		const value = system.value(key);
		if (cells[key] === undefined && isKnown(value)) shown[key] = nearest(value, BigInt(ruler));
	}
	const [top, bottom] = [system.value('top'), system.value('bottom')];
	const shownBottom = shown.bottom ?? (cells.bottom === undefined ? undefined : BigInt(cells.bottom));
	if (isKnown(top) && isKnown(bottom) && shown.top !== undefined && shownBottom !== undefined)
		if (top.compare(bottom) <= 0 && shown.top > shownBottom) shown.top = downTo(top, BigInt(ruler));
	return Object.fromEntries(Object.entries(shown).filter(([, value]) => value > 0n));
}

const nearest = (value: Exact, ruler: bigint) =>
	value
		.times(2n)
		.plus(exact(ruler))
		.over(exact(2n * ruler))
		.floor() * ruler;
const upTo = (value: Exact, ruler: bigint) => value.plus(exact(-micron)).over(exact(ruler)).ceiling() * ruler;
const downTo = (value: Exact, ruler: bigint) => value.plus(exact(micron)).over(exact(ruler)).floor() * ruler;

const isPictureStanding = (cells: Cells, axis: Axis) =>
	cells[pictureKey[axis]] !== undefined ||
	(cells.shape !== undefined && cells[pictureKey[axis === 'width' ? 'height' : 'width']] !== undefined);

function cutWidth(cells: Cells, cover: Cover, system: System, isMountStanding: boolean, settings: Settings) {
	const ruler = BigInt(settings.ruler);
	const [exactSide, exactWindow] = [system.value('side')!, system.value('windowWidth')!];
	const typedSide = cells.side === undefined ? undefined : BigInt(cells.side);
	const typedWindow = cells.windowWidth === undefined ? undefined : BigInt(cells.windowWidth);
	const hasPicture = isPictureStanding(cells, 'width');
	if (!isMountStanding) {
		const side = typedSide ?? nearest(exactSide, ruler);
		const window = typedWindow ?? windowOnRuler(exactWindow, hasPicture, cover.covers.width, ruler);
		return { mountWidth: 2n * side + window, side, windowWidth: window };
	}
	const mount = system.value('mountWidth')!.floor();
	if (typedWindow !== undefined)
		return { mountWidth: mount, side: typedSide ?? (mount - typedWindow) / 2n, windowWidth: typedWindow };
	const last = cover.covers.width ? upTo : downTo;
	const side = typedSide ?? (hasPicture ? last : nearest)(exactSide, ruler);
	return { mountWidth: mount, side, windowWidth: mount - 2n * side };
}

function windowOnRuler(value: Exact, hasPicture: boolean, covers: boolean, ruler: bigint): bigint {
	if (!hasPicture) return nearest(value, ruler);
	return covers ? downTo(value, ruler) : upTo(value, ruler);
}

function cutHeight(cells: Cells, cover: Cover, system: System, isMountStanding: boolean, settings: Settings) {
	const ruler = BigInt(settings.ruler);
	const value = (key: SizeKey) => system.value(key)!;
	const typed = (key: 'top' | 'bottom' | 'windowHeight') => (cells[key] === undefined ? undefined : BigInt(cells[key]));
	const hasPicture = isPictureStanding(cells, 'height');
	const window = typed('windowHeight');
	const last = cover.covers.height ? upTo : downTo;
	const mount = isMountStanding ? value('mountHeight').floor() : undefined;
	const bottomUnder = (top: bigint): bigint => {
		if (typed('bottom') !== undefined) return typed('bottom')!;
		if (mount === undefined || (window === undefined && !hasPicture)) return nearest(value('bottom'), ruler);
		if (window !== undefined) return mount - window - top;
		return last(exact(mount - top).plus(value('windowHeight').times(-1n)), ruler);
	};
	const topOf = (): bigint => {
		const bottom = typed('bottom');
		if (typed('top') !== undefined) return typed('top')!;
		if (mount !== undefined && bottom !== undefined && window !== undefined) return mount - bottom - window;
		if (mount !== undefined && bottom !== undefined && hasPicture)
			return last(exact(mount - bottom).plus(value('windowHeight').times(-1n)), ruler);
		const top = nearest(value('top'), ruler);
		const isByRoundingAlone = value('top').compare(value('bottom')) <= 0 && top > bottomUnder(top);
		return isByRoundingAlone ? downTo(value('top'), ruler) : top;
	};
	const top = topOf();
	const bottom = bottomUnder(top);
	if (mount !== undefined) return { mountHeight: mount, top, bottom, windowHeight: window ?? mount - top - bottom };
	const cutWindow = window ?? windowOnRuler(value('windowHeight'), hasPicture, cover.covers.height, ruler);
	return { mountHeight: top + cutWindow + bottom, top, bottom, windowHeight: cutWindow };
}

function pictureOf(cells: Cells, cover: Cover, windows: Partial<Record<Axis, bigint | undefined>>) {
	const typed = {
		width: cells.pictureWidth === undefined ? undefined : BigInt(cells.pictureWidth),
		height: cells.pictureHeight === undefined ? undefined : BigInt(cells.pictureHeight),
	};
	const asked = {
		width: windows.width === undefined ? undefined : windows.width - cover.width,
		height: windows.height === undefined ? undefined : windows.height - cover.height,
	};
	const { shape } = cells;
	if (!shape) return { width: typed.width ?? asked.width, height: typed.height ?? asked.height };
	const ratio = exact(BigInt(shape.numerator), BigInt(shape.denominator));
	const rounded = (value: Exact, axis: Axis) => (cover.covers[axis] ? value.ceiling() : value.floor());
	const heightOf = (width: bigint) => rounded(exact(width).over(ratio), 'height');
	const widthOf = (height: bigint) => rounded(exact(height).by(ratio), 'width');
	if (typed.width !== undefined) return { width: typed.width, height: typed.height ?? heightOf(typed.width) };
	if (typed.height !== undefined) return { width: widthOf(typed.height), height: typed.height };
	const { width, height } = asked;
	if (width === undefined || height === undefined || width <= 0n || height <= 0n) return asked;
	const byWidth = { width, height: heightOf(width) };
	const byHeight = { width: widthOf(height), height };
	if (cover.covers.width && !cover.covers.height) return byWidth;
	const isFar = ({ width: w, height: h }: typeof byWidth) =>
		cover.covers.width ? w >= width && h >= height : w <= width && h <= height;
	return isFar(byWidth) ? byWidth : byHeight;
}

/** What the mount covers on each side of its innermost window. */
function coveredBy(
	solved: Partial<Record<SolvedKey, bigint | undefined>>,
	outcomes: Record<Axis, Outcome>,
	cover: Cover,
) {
	const half = (value: bigint) => exact(value, 2n).floor();
	const { pictureWidth, windowWidth, pictureHeight, windowHeight } = solved;
	const covered: Partial<Record<SolvedKey, bigint>> = {};
	if (outcomes.width === 'fits') covered.overlapSide = half(pictureWidth! - windowWidth! + cover.inner);
	if (outcomes.height === 'fits') {
		const both = pictureHeight! - windowHeight! + cover.inner;
		const isTopExact = cover.signing > 0n && cover.reveal === undefined;
		covered.overlapTop = isTopExact ? cover.overlap : half(both + cover.signing);
		covered.overlapBottom = both - covered.overlapTop;
	}
	return covered;
}
