import type { Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';

/** What the show's rules allow; each is asked only where given. Sizes hold either way round. */
export interface Limits {
	readonly largest?: Size;
	readonly smallest?: Size;
	readonly exact?: Size;
	/** How far a mount may be from `exact`, on each side. Blank: not at all (1 µm). */
	readonly within?: Length;
	/** Minimum picture area, in mm². */
	readonly pictureAreaMm2?: number;
	/** Greatest thickness of mounts, print and undermount. */
	readonly thickness?: Length;
}
