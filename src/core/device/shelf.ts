/** For how long a deleted show can be brought back. */
export const daysToBringBack = 30;

const dayMs = 24 * 60 * 60 * 1000;

/** Shows that were deleted before this time are forgotten for good. */
export const forgottenBefore = (now: number): number => now - daysToBringBack * dayMs;

/** How many more days a deleted show can be brought back; at least one until it is forgotten. */
export const daysLeft = (deletedAt: number, now: number): number =>
	Math.max(1, Math.ceil((deletedAt - forgottenBefore(now)) / dayMs));

/** Where the show that is open here has been deleted in another tab. */
export const deletedElsewhere = (name: string): string =>
	`“${name}” was deleted in another tab. Nothing of it is lost. Bring it back, or type on, which brings it back too.`;

/** Where a print was deleted in another tab while a cell of it was typed into here. @param text what was typed */
export const typedIntoDeleted = (text: string): string =>
	`The print you were typing in was deleted in another tab. Not saved: “${text}”.`;

/** A name that no other show has: `Spring`, `Spring (2)`. */
export function freeName(wanted: string, taken: readonly string[]): string {
	const names = new Set(taken.map((name) => name.trim()));
	if (!names.has(wanted.trim())) return wanted;
	for (let copy = 2; ; copy++) {
		const name = `${wanted.trim()} (${copy})`;
		if (!names.has(name)) return name;
	}
}
