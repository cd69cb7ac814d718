import { expect, test } from 'vitest';
import { inches, mm } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

test('a wall with what is in the way', () => {
	const { settings, problems } = readSettings({
		unit: 'cm',
		walls: [
			{
				name: 'North',
				length: '14 m',
				height: 300,
				centre: '150',
				gap: '12.5',
				obstacles: [
					{ name: 'door', left: '1200', width: '90', height: '2 m' },
					{ left: 0, bottom: '80', width: '45' },
				],
			},
			{ name: 'South', length: '20 ft' },
		],
	});
	expect(problems).toEqual([]);
	expect(settings.walls).toEqual([
		{
			...{ name: 'North', length: mm(14_000), height: mm(300), centre: mm(1500), gap: mm(125) },
			obstacles: [
				{ name: 'door', left: mm(12_000), bottom: mm(0), width: mm(900), height: mm(2000) },
				{ name: 'obstacle', left: mm(0), bottom: mm(800), width: mm(450), height: undefined },
			],
		},
		{ ...{ name: 'South', length: inches(240), height: undefined, centre: mm(1450), gap: undefined }, obstacles: [] },
	]);
});

test('what cannot be read of a wall is named', () => {
	const { settings, problems } = readSettings({
		walls: [
			{ name: 'A', length: 'long' },
			{ length: 3000 },
			{ name: 'B', length: 3000, obstacles: [{ left: 20 }, 7] },
			{ name: ' b', length: 3000 },
			{ name: 'C', length: '101 m' },
		],
	});
	expect(settings.walls.map(({ name, obstacles }) => [name, obstacles.length])).toEqual([['B', 0]]);
	expect(problems.map(({ key }) => key)).toEqual([
		'walls[0].length',
		'walls[1].name',
		'walls[2].obstacles[1]',
		'walls[2].obstacles[0].width',
		'walls[3].name',
		'walls[4].length',
	]);
});

test('what frames hang by', () => {
	const read = (hanging: unknown) => readSettings({ unit: 'in', hanging }).settings.hanging;
	expect(read('rail')).toEqual({ ...read(undefined), kind: 'rail' });
	expect(read(undefined).inset).toBe(inches(1.25));
	expect(read({ rings: '5 1/2', rating: '30 lb', slack: '8 %', nail: '1/2' })).toEqual({
		...{ kind: 'cord', inset: inches(1.25), slackPercent: 8, ratingKg: 30 * 0.45359237, nail: inches(0.5) },
		rings: { kind: 'length', length: inches(5.5) },
	});
	expect(read({ rings: '30 %' }).rings).toEqual({ kind: 'share', percent: 30 });
	expect(readSettings({ hanging: { kind: 'glue', rating: 0, inset: 'x' } }).problems.map(({ key }) => key)).toEqual([
		'hanging.kind',
		'hanging.inset',
		'hanging.rating',
	]);
});
