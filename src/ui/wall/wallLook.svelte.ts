import { nearestLength } from '../../core/length/length.ts';
import {
	centredOn,
	fillHeight,
	fitWidth,
	type Look,
	lookNear,
	type SceneBox,
	wallAt,
	type WallScene,
	zoomed,
} from './wallScene.ts';

/** In a narrower drawing, as on a phone, a wall is drawn as high as there is room, and scrolled sideways; in pixels. */
const narrow = 600;

/** What of the walls is seen: zoomed and panned, and until then all of them; of one wall on a phone what fills the height. */
export class WallLook {
	/** Of the drawing, in pixels. */
	readonly room = $state({ width: 0, height: 0 });
	#look = $state.raw<Look>();
	#isFitted = true;
	/** Whether a single wall is seen from end to end, however small that is. */
	#isWhole = false;
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

	/** Whether there is so little room that one wall is not seen from end to end at first. */
	get isNarrow(): boolean {
		return this.room.width < narrow;
	}

	/** All that is drawn, from end to end. */
	fit(): void {
		this.#isFitted = this.#isWhole = true;
		this.refit();
	}

	/** As it is at first. @param isOther whether other walls are drawn: then they begin at their left ends */
	open(isOther: boolean): void {
		if (isOther) this.#look = undefined;
		this.#isFitted = true;
		this.#isWhole = false;
		this.refit();
	}

	/** Until somebody zooms or pans, the drawing fills the room that there is. */
	refit(): void {
		if (!this.#isFitted || this.room.width === 0) return;
		const [scene, isTall] = [this.#scene(), this.isNarrow && !this.#isWhole];
		this.#look =
			isTall && scene.walls.length === 1 ? fillHeight(scene, this.room, this.#look) : fitWidth(scene, this.room);
	}

	/** On a phone, brings what is not all in view to the middle. */
	show(box: SceneBox): void {
		const { x, scale } = this.now;
		const left = x + box.x * scale;
		if (!this.isNarrow || (left >= 0 && left + box.width * scale <= this.room.width)) return;
		this.#isFitted = false;
		this.#look = centredOn(this.now, this.#scene(), this.room, box);
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
