import type { PartInEvery, PartName, ValueOf } from './parts.ts';

type InEvery = { readonly [Name in PartInEvery]: ValueOf<Name> };
type InSome = { readonly [Name in Exclude<PartName, PartInEvery>]?: ValueOf<Name> };

/** A show: what it is known by on this device, and its parts; `parts.ts` says what they are. */
export interface Show extends InEvery, InSome {
	readonly id: string;
}
