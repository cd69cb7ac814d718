import { expect, test } from 'vitest';
import { withoutIdleMethods } from '../../../src/build/solverInBrowser.ts';

const script = `class Model {
	constructor() { this.first(); }
	first() { return 1; }
	called() { return this.inside(); }
	inside() { return 2; }
	byName() { return 3; }
	idle() { return this.onlyIdle(); }
	onlyIdle() { return 4; }
	get field() { return 5; }
	static made() { return new Model(); }
}
export const model = new Model();
export const three = model["byName"]();`;

test('methods that nothing names are left out, and those that only they call; what is named in a text stays', () => {
	const left = withoutIdleMethods(script, 'model.called();');
	for (const name of ['first', 'called', 'inside', 'byName', 'field']) expect(left).toContain(name);
	for (const name of ['idle', 'onlyIdle', 'made']) expect(left).not.toMatch(new RegExp(`\\b${name}\\b`));
	expect(withoutIdleMethods(script, 'idle made')).toBe(
		script.replace('\tcalled() { return this.inside(); }\n', '\t\n').replace('\tinside() { return 2; }\n', '\t\n'),
	);
});

test('nothing is taken out of the solver that it or its caller names', async () => {
	const run = async (code: string) =>
		(await import(`data:text/javascript,${encodeURIComponent(code)}`)) as {
			model: { called: () => number };
			three: number;
		};
	const { model, three } = await run(withoutIdleMethods(script, 'model.called();'));
	expect([model.called(), three]).toEqual([2, 3]);
});
