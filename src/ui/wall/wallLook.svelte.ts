import { nearestLength } from '../../core/length/length.ts';
import { fitWidth, type Look, lookNear, type SceneBox, wallAt, type WallScene, zoomed } from './wallScene.ts';

/** What of the walls is seen: zoomed and panned, and until then all of them. */
export class WallLook {
	/** Of the drawing, in pixels. */
	readonly room = $state({ width: 0, height: 0 });
	#look = $state.raw<Look>();
	#isFitted = true;
	readonly #scene: () => WallScene;
	readonly #box: () => DOMRect;

	/** @param box of the drawing on the screen */
	constructor(scene: () => WallScene, box: () => DOMRect) {
		this.#scene = scene;
		this.#box = box;
	}

	get now(): Look {
		return this.#look ?? { scale: 0.1, x: 0, y: 0 };
	}

	/** Whether it is known how much room there is: nothing is drawn before, for it would jump. */
	get isKnown(): boolean {
		return this.#look !== undefined;
	}

	fit(): void {
		this.#isFitted = true;
		this.refit();
	}

	/** Until somebody zooms or pans, the drawing fills the room that there is. */
	refit(): void {
		if (this.#isFitted && this.room.width > 0) this.#look = fitWidth(this.#scene(), this.room);
	}

	/** @param at a point of the screen that stays where it is; the drawing's middle where none is given */
	zoom(factor: number, at?: { readonly x: number; readonly y: number }): void {
		this.#isFitted = false;
		const { left, top } = this.#box();
		const kept = at ? { x: at.x - left, y: at.y - top } : { x: this.room.width / 2, y: this.room.height / 2 };
		this.#look = zoomed(this.now, factor, kept);
	}

	/**
	 * Comes near to a box of the scene, in millimetres, that is smaller than so many pixels.
	 * @returns whether it had to
	 */
	approach(box: SceneBox, least: number): boolean {
		const near = lookNear(this.now, this.room, box, least);
		if (near === undefined) return false;
		this.#isFitted = false;
		this.#look = near;
		return true;
	}

	pan(x: number, y: number): void {
		this.#isFitted = false;
		this.#look = { ...this.now, x: this.now.x + x, y: this.now.y + y };
	}

	/** The wall under a point of the screen, with how far along it and how high above its floor; undefined beside all. */
	wallUnder(clientX: number, clientY: number) {
		const { left, top, width, height } = this.#box();
		const [x, y] = [clientX - left, clientY - top];
		if (x < 0 || x > width || y < 0 || y > height) return undefined;
		const look = this.now;
		const inScene = { x: (x - look.x) / look.scale, y: (y - look.y) / look.scale };
		const found = wallAt(this.#scene(), inScene.x, inScene.y);
		return (
			found && {
				drawn: found.wall,
				along: nearestLength(found.along * 1e7),
				up: nearestLength((found.wall.floor - inScene.y) * 1e7),
			}
		);
	}
}
