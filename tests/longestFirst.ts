import { BaseSequencer, type TestSpecification } from 'vitest/node';

/**
 * The files that take longest, by how their paths begin: two of them at the end would leave one of two cores with nothing to
 * do. Vitest knows how long a file took only where it has run before; else it takes the largest first, and a long play may
 * stand in a few lines.
 */
const longest = [
	'tests/browser/axe/',
	'tests/browser/offline/',
	'tests/browser/bench/workedThrough',
	'tests/browser/exchange',
	'tests/browser/grid/keys',
];

/** Runs the files that take longest first, and all others as vitest has them. */
export class LongestFirst extends BaseSequencer {
	override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
		const others = await super.sort(files);
		const isLong = ({ moduleId }: TestSpecification) => longest.some((path) => moduleId.includes(`/${path}`));
		return [...others.filter(isLong), ...others.filter((file) => !isLong(file))];
	}
}
