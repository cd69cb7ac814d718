import type { Length } from '../../core/length/length.ts';
import type { Obstacle } from '../../core/settings/wall.ts';
import type { Side } from '../../core/walls/obstacleBox.ts';
import { type Axis, type Held, heldAt, isMoved, nearAt, type ScreenPoint } from './held.ts';
import type { WallLook } from './wallLook.svelte.ts';
import type { DrawnWall, WallScene } from './wallScene.ts';

/** An obstacle by its wall's place in the show's list and its own among the wall's, from 0. */
export interface ObstaclePlace {
	readonly wall: number;
	readonly at: number;
}

/** What the hand works on, and what comes of it. */
export interface HandTasks {
	readonly scene: () => WallScene;
	readonly look: WallLook;
	readonly ruler: () => Length;
	/** Whether the next finger draws an obstacle. */
	readonly isDrawing: () => boolean;
	/** The obstacle that is selected: only that one is moved, so that one may pan over the others. */
	readonly obstacle: () => ObstaclePlace | undefined;
	readonly evenOf: (place: number, axis: Axis) => Length | undefined;
	readonly onselect: (place: number) => void;
	/** An obstacle was tapped, or what is none. */
	readonly onobstacle: (obstacle: ObstaclePlace | undefined) => void;
	/** A print was dropped with its left edge there; `near` is how far from its even place still counts as that. */
	readonly ondrop: (place: number, left: Length, near: Length) => void;
	/** A print was dropped with its middle there; undefined where it goes back to where it hangs with nothing typed. */
	readonly onlift: (place: number, centre: Length | undefined) => void;
	/** A print was dropped on another wall, so far along it. */
	readonly onwall: (place: number, wall: number, along: Length) => void;
	/** An obstacle was drawn (`at` undefined), moved or resized. */
	readonly onput: (wall: number, at: number | undefined, obstacle: Obstacle) => void;
}

/** Fingers and mouse on the walls: one drags what is under it, or pans; two zoom. What is dragged is drawn once a frame. */
export class WallHand {
	#held = $state.raw<Held>();
	readonly #tasks: HandTasks;
	readonly #fingers = new Map<number, ScreenPoint>();
	/** Where the finger is that drags, until it is drawn there. */
	#point: ScreenPoint | undefined;
	#frame = 0;
	/** What a tap would select, as long as the finger has not panned. */
	#tapped: { readonly obstacle: ObstaclePlace | undefined; readonly from: ScreenPoint } | undefined;

	constructor(tasks: HandTasks) {
		this.#tasks = tasks;
	}

	/** What is dragged, once it has moved. */
	get held(): Held | undefined {
		return this.#held && isMoved(this.#held) ? this.#held : undefined;
	}

	/** Whether a finger is on something that it could drag. */
	get isHolding(): boolean {
		return this.#held !== undefined;
	}

	down(event: PointerEvent): void {
		if (event.button !== 0) return;
		const from = pointOf(event);
		this.#fingers.set(event.pointerId, from);
		if (this.#fingers.size > 1) {
			this.cancel();
			return;
		}
		const target = event.target as Element;
		const { isDrawing, obstacle } = this.#tasks;
		if (isDrawing()) return this.#beginDrawing(from);
		const print = target.closest<SVGElement>('[data-place]');
		if (print) return this.#beginPrint(Number(print.dataset['place']), from);
		const found = obstacleAt(target);
		const chosen = obstacle();
		if (found && chosen?.wall === found.wall && chosen.at === found.at)
			this.#beginObstacle(found, sideAt(target), from);
		else this.#tapped = { obstacle: found, from };
	}

	move(event: PointerEvent): void {
		const before = this.#fingers.get(event.pointerId);
		if (!before) return;
		const now = pointOf(event);
		this.#fingers.set(event.pointerId, now);
		const { look } = this.#tasks;
		if (this.#fingers.size === 2) {
			const other = [...this.#fingers].find(([id]) => id !== event.pointerId)![1];
			const apart = (a: ScreenPoint) => Math.hypot(a.x - other.x, a.y - other.y);
			look.zoom(apart(now) / Math.max(1, apart(before)), other);
		} else if (this.#held) {
			// The way that it goes is the way that it begins: the points that the browser put together count for that.
			for (const each of isMoved(this.#held) ? [] : event.getCoalescedEvents()) this.#follow(pointOf(each));
			this.#point = now;
			this.#frame ||= requestAnimationFrame(() => this.#follow());
		} else if (this.#fingers.size === 1) {
			if (this.#tapped && Math.hypot(now.x - this.#tapped.from.x, now.y - this.#tapped.from.y) > 4)
				this.#tapped = undefined;
			look.pan(now.x - before.x, now.y - before.y);
		}
	}

	up(event: PointerEvent): void {
		if (!this.#fingers.delete(event.pointerId)) return;
		this.#follow(pointOf(event));
		const held = this.held;
		const tapped = this.#tapped;
		this.cancel();
		if (held) this.#drop(held, event);
		else if (tapped) this.#tasks.onobstacle(tapped.obstacle);
	}

	/** The browser took the finger away. */
	lost(event: PointerEvent): void {
		this.#fingers.delete(event.pointerId);
		this.cancel();
	}

	/** Lets go of what is held, where it was. @returns whether anything was */
	cancel(): boolean {
		const was = this.#held !== undefined;
		cancelAnimationFrame(this.#frame);
		this.#frame = 0;
		this.#held = this.#point = this.#tapped = undefined;
		return was;
	}

	#follow(point = this.#point): void {
		cancelAnimationFrame(this.#frame);
		this.#frame = 0;
		if (!this.#held || !point) return;
		const { look, ruler, evenOf } = this.#tasks;
		const under = look.wallUnder(point.x, point.y)?.drawn.wall;
		const over = under === undefined ? 'none' : under === this.#held.drawn.wall ? 'own' : 'other';
		this.#held = heldAt(this.#held, point, { scale: look.now.scale, ruler: ruler(), over, evenOf });
		this.#point = undefined;
	}

	#drawnWall = (wall: number): DrawnWall | undefined => this.#tasks.scene().walls.find((each) => each.wall === wall);

	#beginPrint(place: number, from: ScreenPoint): void {
		const found = this.#tasks
			.scene()
			.walls.map((drawn) => ({ drawn, print: drawn.hung.prints.find((each) => each.place === place) }))
			.find(({ print }) => print !== undefined);
		if (!found?.print) return;
		const { drawn, print } = found;
		const { left, centre } = print;
		const start = { by: { x: 0, y: 0 }, axis: undefined, even: undefined, over: 'own' } as const;
		this.#held = { kind: 'print', ...start, drawn, print, place, from, left, centre };
		this.#tasks.onselect(place);
	}

	#beginObstacle({ wall, at }: ObstaclePlace, side: Side | undefined, from: ScreenPoint): void {
		const drawn = this.#drawnWall(wall);
		const was = drawn?.hung.wall.obstacles[at];
		if (!drawn || !was) return;
		const start = { axis: undefined, isMoved: false, start: { x: 0, y: 0 } } as const;
		this.#held = { kind: 'obstacle', ...start, drawn, from, at, side, was, now: was };
	}

	#beginDrawing(from: ScreenPoint): void {
		const under = this.#tasks.look.wallUnder(from.x, from.y);
		if (!under) return;
		const { drawn, along, up } = under;
		const none = { at: undefined, side: undefined, was: undefined, now: undefined, axis: undefined } as const;
		this.#held = { kind: 'obstacle', ...none, isMoved: false, start: { x: along, y: up }, drawn, from };
	}

	#drop(held: Held, event: PointerEvent): void {
		const { look, ondrop, onlift, onwall, onput } = this.#tasks;
		if (held.kind === 'obstacle') {
			if (held.now) onput(held.drawn.wall, held.at, held.now);
			return;
		}
		const under = look.wallUnder(event.clientX, event.clientY);
		if (under && under.drawn.wall !== held.drawn.wall) onwall(held.place, under.drawn.wall, under.along);
		else if (held.axis === 'across') ondrop(held.place, held.left, nearAt(look.now.scale));
		else if (under) onlift(held.place, held.centre === held.even ? undefined : held.centre);
	}
}

const pointOf = ({ clientX, clientY }: PointerEvent): ScreenPoint => ({ x: clientX, y: clientY });

/** The obstacle that an element of the drawing is of, or a handle of. */
export function obstacleAt(target: Element): ObstaclePlace | undefined {
	const { dataset } = target.closest<SVGElement>('[data-obstacle]') ?? {};
	const at = dataset?.['obstacle'];
	return at === undefined ? undefined : { wall: Number(dataset!['wall']), at: Number(at) };
}

/** The side of the selected obstacle that a handle is of. */
export const sideAt = (target: Element): Side | undefined =>
	target.closest<SVGElement>('[data-side]')?.dataset['side'] as Side | undefined;
