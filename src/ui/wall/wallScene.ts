import { mmPerMetre, toMm } from '../../core/length/length.ts';
import type { Obstacle } from '../../core/settings/wall.ts';
import type { HungWall } from '../../core/walls/hungPrint.ts';

/** A wall as it is drawn with others, in millimetres of one scene: all to one scale, one under the other. */
export interface DrawnWall {
	readonly hung: HungWall;
	/** Its place in the show's list, from 0. */
	readonly wall: number;
	/** Its left edge and its floor in the scene. */
	readonly x: number;
	readonly floor: number;
	readonly width: number;
	readonly height: number;
}

/** Walls drawn together. */
export interface WallScene {
	readonly walls: readonly DrawnWall[];
	readonly width: number;
	readonly height: number;
}

/** Room left of the walls for the person, and over each for its name. */
const besideMm = 800;
const overMm = 520;
/** Under each floor, for what is measured along it. */
const underMm = 640;
/** How high a wall is drawn whose height is not known: over what hangs on it, too. */
const usualHeightMm = 2.6 * mmPerMetre;

/**
 * Lays walls out under each other.
 * @param isNarrow whether they are drawn so small that their names need more of the scene
 */
export function layOutWalls(hung: readonly HungWall[], shown: readonly number[], isNarrow = false): WallScene {
	const [over, under] = isNarrow ? [2.5 * overMm, 1.6 * underMm] : [overMm, underMm];
	let bottom = 0;
	const walls = shown.map((wall): DrawnWall => {
		const each = hung[wall]!;
		const tops = each.prints.map(({ centre, size }) => toMm(centre) + toMm(size.height) / 2 + 100);
		const height = each.wall.height === undefined ? Math.max(usualHeightMm, ...tops) : toMm(each.wall.height);
		const floor = bottom + over + height;
		bottom = floor + under;
		return { hung: each, wall, x: besideMm, floor, width: toMm(each.wall.length), height };
	});
	return { walls, width: besideMm + Math.max(1000, ...walls.map(({ width }) => width)), height: bottom };
}

/** The wall at a point of the scene, and how far from its left edge the point is, in mm. */
export function wallAt({ walls }: WallScene, x: number, y: number) {
	const found = walls.find(({ floor, height }) => y <= floor + 60 && y >= floor - height - overMm / 2);
	return found && { wall: found, along: x - found.x };
}

/** A rectangle of the scene, in millimetres, from its upper left corner. */
export interface SceneBox {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** Where an obstacle is drawn; one whose height is not known goes up to the top of its wall. */
export function obstacleBoxIn({ x, floor, height: wallHeight }: DrawnWall, obstacle: Obstacle): SceneBox {
	const above = toMm(obstacle.bottom);
	const height = obstacle.height === undefined ? wallHeight - above : toMm(obstacle.height);
	return { x: x + toMm(obstacle.left), y: floor - above - height, width: toMm(obstacle.width), height };
}

/** What of a scene is seen: pixels a millimetre, and where the scene's corner is. */
export interface Look {
	readonly scale: number;
	readonly x: number;
	readonly y: number;
}

/** The edge that every screen has, in pixels. */
const edgeOf = (width: number) => (width <= 640 ? 16 : 24);

/** The look by which a scene fills a width, from edge to edge. */
export const fitWidth = (
	{ width, height }: WallScene,
	room: { readonly width: number; readonly height: number },
): Look => {
	const edge = edgeOf(room.width);
	const wide = (room.width - 2 * edge) / width;
	const scale = Math.max(0.01, Math.min(wide, Math.max(room.height / height, wide * 0.6)));
	return { scale, x: edge, y: Math.max(0, (room.height - height * scale) / 2) };
};

/**
 * The look by which a scene fills the height of a room that is too narrow for all of it, from its left edge or with the same
 * part of it in the middle as before; the look that fits where it has the width.
 */
export function fillHeight(
	scene: WallScene,
	room: { readonly width: number; readonly height: number },
	before?: Look,
): Look {
	const whole = fitWidth(scene, room);
	const scale = room.height / scene.height;
	if (scale <= whole.scale) return whole;
	const { x } = before ? zoomed(before, scale / before.scale, { x: room.width / 2, y: 0 }) : whole;
	return inRoom({ scale, x, y: 0 }, scene, room);
}

/** A look moved sideways until a box of the scene is in the middle of the room, or as near to it as the scene goes. */
export const centredOn = (
	look: Look,
	scene: WallScene,
	room: { readonly width: number; readonly height: number },
	{ x, width }: Pick<SceneBox, 'x' | 'width'>,
): Look => inRoom({ ...look, x: room.width / 2 - (x + width / 2) * look.scale }, scene, room);

/** A scene that is wider than the room leaves no more room beside it than its edge. */
function inRoom(look: Look, { width }: WallScene, room: { readonly width: number }): Look {
	const edge = edgeOf(room.width);
	return { ...look, x: Math.min(edge, Math.max(room.width - edge - width * look.scale, look.x)) };
}

/**
 * The look by which a box of the scene, in millimetres, lies in the middle of the room and is at least so wide and high in
 * pixels; at most `most` times as near as before. Undefined where it is large enough already.
 */
export function lookNear(
	look: Look,
	room: { readonly width: number; readonly height: number },
	box: SceneBox,
	least: number,
	most = 4,
): Look | undefined {
	const factor = Math.min(most, least / (look.scale * Math.min(box.width, box.height)));
	if (!(factor > 1)) return undefined;
	const { scale } = zoomed(look, factor, { x: 0, y: 0 });
	const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
	return { scale, x: room.width / 2 - middle.x * scale, y: room.height / 2 - middle.y * scale };
}

/** A look, nearer or farther by a factor, with a point of the screen kept where it is. */
export function zoomed(look: Look, factor: number, at: { readonly x: number; readonly y: number }): Look {
	const scale = Math.min(4, Math.max(0.01, look.scale * factor));
	const by = scale / look.scale;
	return { scale, x: at.x - (at.x - look.x) * by, y: at.y - (at.y - look.y) * by };
}
