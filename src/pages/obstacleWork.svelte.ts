import type { Session } from '../app/session.svelte.ts';
import type { Step } from '../app/history.svelte.ts';
import { type ObstacleCell, putObstacle, removeObstacle, typeObstacle } from '../core/commands/changeObstacles.ts';
import type { Length } from '../core/length/length.ts';
import type { Obstacle } from '../core/settings/wall.ts';
import type { Command } from '../core/show/edit.ts';
import {
	movedObstacle,
	resizedObstacle,
	type Side,
	type UsualObstacle,
	usualObstacle,
} from '../core/walls/obstacleBox.ts';
import type { ObstaclePlace } from '../ui/wall/wallHand.svelte.ts';

/** What is done to what is in the way on walls: each one edit of the settings, and one step of undo. */
export class ObstacleWork {
	readonly #session: Session;
	/** The run of keys that moves one obstacle, or one side of it: one step, however many there are. */
	#nudged: { readonly what: string; readonly step: Step } | undefined;
	#selected = $state.raw<ObstaclePlace>();
	/** Whether the next finger draws one. */
	isDrawing = $state(false);

	constructor(session: Session) {
		this.#session = session;
	}

	/** The one that is selected; undefined once it is gone, by undo or in another tab. */
	get selected(): ObstaclePlace | undefined {
		return this.at(this.#selected) && this.#selected;
	}

	select(place: ObstaclePlace | undefined): void {
		this.#selected = place;
	}

	/** The obstacle at a place; undefined where none is there any more. */
	at(place: ObstaclePlace | undefined): Obstacle | undefined {
		return place && this.#session.settings.walls[place.wall]?.obstacles[place.at];
	}

	#do(command: Command): Step | undefined {
		this.#nudged = undefined;
		return this.#session.do(command);
	}

	/** Puts an obstacle on a wall, or another in its place, and selects it. @returns where it is */
	put(wall: number, at: number | undefined, obstacle: Obstacle): ObstaclePlace {
		const { name, obstacles } = this.#session.settings.walls[wall]!;
		const was = at === undefined ? undefined : obstacles[at];
		const isAsLarge = was?.width === obstacle.width && was.height === obstacle.height;
		const label = !was ? `Add ${obstacle.name} to ${name}` : `${isAsLarge ? 'Move' : 'Resize'} ${was.name}`;
		this.#do((show) => putObstacle(show, wall, at, obstacle, label));
		this.isDrawing = false;
		return (this.#selected = { wall, at: at ?? obstacles.length });
	}

	/** Adds an obstacle as large as such things often are. @returns where it is */
	add(kind: UsualObstacle, wall: number): ObstaclePlace {
		const { walls, unit, ruler } = this.#session.settings;
		return this.put(wall, undefined, usualObstacle(kind, walls[wall]!, unit, ruler));
	}

	/** Moves an obstacle, or one side of it, by keys. A run of them is one step. */
	nudge(place: ObstaclePlace, side: Side | undefined, across: Length, up: Length): void {
		const was = this.at(place);
		if (!was) return;
		this.#selected = place;
		const { walls, ruler } = this.#session.settings;
		const on = { wall: walls[place.wall]!, ruler, near: 0 };
		const along = side === 'left' || side === 'right' ? across : up;
		const moved = side ? resizedObstacle(was, side, along, on) : movedObstacle(was, { x: across, y: up }, on);
		const label = `${side ? 'Resize' : 'Move'} ${was.name}`;
		const move: Command = (show) => putObstacle(show, place.wall, place.at, moved, label);
		const what = `${place.wall} ${place.at} ${side ?? ''}`;
		const before = this.#nudged;
		const isRun = before?.what === what && this.#session.lastStep === before.step;
		const step = isRun ? this.#session.doInstead(before.step, move) : this.#session.do(move);
		this.#nudged = step && { what, step };
	}

	/** Types a cell of an obstacle. @returns why it could not be read */
	type({ wall, at }: ObstaclePlace, key: ObstacleCell, text: string): string | undefined {
		const label = `Type ${key} of ${this.at({ wall, at })?.name ?? 'obstacle'}`;
		const typed = typeObstacle(this.#session.show, wall, at, { key, text }, label);
		if ('problem' in typed) return typed.problem;
		this.#do(() => typed);
		return undefined;
	}

	remove({ wall, at }: ObstaclePlace): void {
		const name = this.at({ wall, at })?.name;
		this.#selected = undefined;
		if (name !== undefined) this.#do((show) => removeObstacle(show, wall, at, `Delete ${name}`));
	}
}
