import { describe, expect, test } from 'vitest';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { codesOf, resultOf, rowOf, wideShow } from './rowOf.ts';
import { describeRules, type RuleCase } from './ruleCases.ts';

const boards = [
	{ name: 'Thin', kind: 'sheet', width: '1200 mm', height: '900 mm', thickness: '1.1 mm' },
	{ name: 'Foam', kind: 'sheet', width: '1200 mm', height: '900 mm', thickness: '5 mm' },
	{ name: 'White', kind: 'sheet', width: '1200 mm', height: '900 mm', thickness: '1.4 mm' },
];
const frames = [{ name: 'Oak', rebateWidth: '604 mm', rebateHeight: '454 mm', depth: '12 mm', lip: '6 mm' }];
const stocked = (more: TypedSettings): TypedSettings => ({ ...wideShow, boards, ...more });

const cases: readonly RuleCase[] = [
	{
		code: 'shape-clash',
		level: 'look',
		told: 'shape 3:2, picture 456 x 290',
		says: '456 × 290 mm, which is not 3:2. 4.6 % of its height is cut off',
		mend: 'Set picture height to 304',
		not: 'shape 3:2, picture 456 x 301',
	},
	{
		code: 'shape-clash',
		level: 'look',
		told: 'shape 3:2, picture 450 x 303.1',
		says: '450 × 303.1 mm, which is not 3:2. 1 % of its width is cut off',
		not: 'shape 3:2, picture 450 x 303', // just 1 % too high
	},
	{
		code: 'shape-clash',
		level: 'look',
		told: 'shape 3:2, window 400 x 260',
		says: '406 × 266 mm, which is not 3:2. 1.7 % of its height is covered by the mount',
		mend: 'Set window height to 265',
		not: 'shape 3:2, window 400 x 264',
	},
	{
		code: 'bottom-heavy',
		level: 'look',
		told: 'picture 456 x 306, top 60',
		says: 'The bottom 90 is 30 mm wider than the top 60',
		mend: 'Set top to 71',
		not: 'picture 456 x 306, top 67',
	},
	{
		code: 'paper-short',
		level: 'stop',
		told: 'picture 456 x 306, paper A3',
		says: 'The paper 420 × 297 mm is 36 short of the picture’s width 456',
		mend: 'Set paper to A3+, 483 × 329',
		not: 'picture 420 x 297, paper A3',
	},
	{
		code: 'paper-short',
		level: 'look',
		told: 'picture 420 x 280, reveal 6, paper 440 x 305',
		says: 'The paper has only 4 mm behind the mount at the sides and needs 5 mm',
		mend: 'Set paper to A3+, 483 × 329',
		not: 'picture 420 x 280, reveal 6, paper 442 x 305',
	},
	{
		code: 'paper-crowds',
		level: 'look',
		told: 'picture 456 x 306, paper 592 x 400',
		says: 'The paper is 4 mm from the mount’s edge at the sides; hinges need 5 mm',
		mend: 'Set paper to A3+, 483 × 329',
		not: 'picture 456 x 306, paper 590 x 400',
	},
	{
		code: 'too-thick',
		level: 'stop',
		told: 'picture 456 x 306, board Foam',
		says: 'Mount, print and undermount are about 5 + 0.3 + 1.4 = 6.7 thick, more than the 4 mm allowed',
		mend: 'Clear board',
		not: 'picture 456 x 306, board Thin',
		show: stocked({ limits: { thickness: '4 mm' }, undermount: 'White' }),
	},
	{
		code: 'touches-glass',
		level: 'stop',
		told: 'picture 456 x 306, mount none, glazing glass, surface gloss',
		says: 'Nothing keeps the print off the glass. There is no mount and no spacer, and a gloss surface sticks to it',
		mend: 'Set spacer to 3',
		not: 'picture 456 x 306, mount none, glazing none, surface gloss',
	},
	{
		code: 'touches-glass',
		level: 'look',
		told: 'picture 456 x 306, mount none, glazing acrylic, surface fine art',
		says: 'Nothing keeps the print off the acrylic',
		mend: 'Set mount to the show’s',
		not: 'picture 456 x 306, mount none, glazing acrylic, spacer 3',
	},
	{
		code: 'touches-glass',
		level: 'stop',
		told: 'picture 456 x 306, mount none, surface resin coated',
		says: 'Nothing keeps the print off the glass. There is no mount and no spacer, and a resin-coated surface sticks to it',
		mend: 'Set spacer to 3',
		not: 'picture 456 x 306, mount none, surface resin coated, frame none',
	},
	{
		code: 'touches-glass',
		level: 'look',
		told: 'picture 456 x 306, mount none, surface baryta',
		says: 'Nothing keeps the print off the glass. There is no mount and no spacer.',
		mend: 'Set glazing to none',
		not: 'picture 456 x 306, mount none, surface baryta, glazing none',
	},
	{
		code: 'touches-glass',
		level: 'look',
		told: 'picture 456 x 306, mount none, surface lustre, spacer 2.9',
		says: 'The spacer of 2.9 mm leaves the print too near the glass. It needs at least 3 mm',
		mend: 'Set spacer to 3',
		not: 'picture 456 x 306, mount none, surface lustre, spacer 3',
	},
	{
		code: 'touches-glass',
		level: 'look',
		told: 'picture 601 x 400, mount none, spacer 3',
		says: 'The spacer of 3 mm leaves the print too near the glass. It needs at least 5 mm for a side over 600 mm',
		mend: 'Set spacer to 5',
		not: 'picture 600 x 400, mount none, spacer 3',
	},
	{
		code: 'touches-glass',
		level: 'look',
		told: 'picture 25 x 16, mount none, spacer 1/8',
		says: 'It needs at least 3/16 in for a side over 24 in',
		mend: 'Set spacer to 3/16',
		not: 'picture 24 x 16, mount none, spacer 1/8',
		show: { unit: 'in' },
	},
	{
		code: 'touches-glass',
		level: 'look',
		told: 'picture 456 x 306, mount none, spacer 5',
		says: 'The spacer of 5 mm leaves the print too near the glass. It needs at least 6 mm',
		mend: 'Set spacer to 6',
		not: 'picture 456 x 306, mount none, spacer 6',
		show: { ...wideShow, leastSpacer: '6 mm' },
	},
	{
		code: 'touches-glass',
		level: 'look',
		told: 'picture 456 x 306, surface pastel',
		says: 'A pastel surface rubs off. Behind a single mount it needs a spacer',
		mend: 'Set spacer to 3',
		not: 'picture 456 x 306, surface pastel, spacer 3',
	},
	{
		code: 'touches-glass',
		level: 'look',
		told: 'picture 456 x 306, surface charcoal, glazing acrylic',
		says: 'A charcoal surface rubs off',
		not: 'picture 456 x 306, surface charcoal, glazing acrylic, inner mount 5',
	},
	{
		code: 'too-deep',
		level: 'look',
		told: 'picture 456 x 306, frame Oak, board White',
		says: 'Glazing, mount, print, undermount and backing are about 2 + 1.4 + 0.3 + 1.4 + 3 = 8.1 deep. Of the rebate’s 10 only 1.9 is left, and points need 2 mm',
		mend: 'Clear frame',
		not: 'picture 456 x 306, frame Oak, board Thin',
		show: stocked({
			frames: [{ ...frames[0], depth: '10 mm' }],
			frame: 'none',
			undermount: 'White',
			boards: [boards[2], ...boards],
		}),
	},
	{
		code: 'too-deep',
		level: 'stop',
		told: 'picture 602 x 452, mount none, spacer 5, glazing acrylic',
		says: 'Glazing, spacer, print and backing are about 3 + 5 + 0.3 + 3 = 11.3 deep, 0.3 mm more than the rebate’s 11',
		mend: 'Clear spacer',
		not: 'picture 602 x 452, mount none, spacer 2, glazing acrylic',
		show: stocked({ frames: [{ ...frames[0], depth: '11 mm' }] }),
	},
	{
		code: 'too-deep',
		level: 'look',
		told: 'picture 456 x 306, glazing none',
		says: 'Mount, print and backing are about 1.4 + 0.3 + 3 = 4.7 deep. Of the rebate’s 9 only 4.3 is left, and points need 4.5 mm',
		not: 'picture 456 x 306, glazing none, board Thin',
		show: stocked({ frames: [{ ...frames[0], depth: '9 mm' }], pointsRoom: '4.5 mm', boards: [boards[2], ...boards] }),
	},
	{
		code: 'paper-crowds',
		level: 'look',
		told: 'picture 456 x 306, paper 640 x 400',
		says: 'The paper is 20 mm past the mount’s edge at the sides; hinges need 5 mm.',
		not: 'picture 456 x 306, paper 590 x 400',
	},
	{
		code: 'paper-crowds',
		level: 'look',
		told: 'picture 456 x 306, paper 600 x 400',
		says: 'The paper reaches the mount’s edge at the sides; hinges need 5 mm',
		not: 'picture 456 x 306, paper 590 x 400',
	},
	{
		code: 'lip-shrinks',
		level: 'look',
		told: 'picture 592 x 306, mount show, frame Oak, board White',
		says: 'Nothing of the 7 side shows',
		not: 'picture 456 x 306, mount show, frame Oak, board White',
		show: stocked({ frames: [{ ...frames[0], lip: '10 mm' }] }),
	},
	{
		code: 'signed-on-mount',
		level: 'look',
		told: 'picture 456 x 306, signed on mount',
		says: 'Sign the print',
		mend: 'Set signed where to back',
		not: 'picture 456 x 306, signed on picture',
	},
	{
		code: 'signature-covered',
		level: 'look',
		told: 'picture 456 x 306, signed on margin, paper 500 x 360',
		says: 'covers the picture by 3 mm below',
		mend: 'Set signing space to 10',
		not: 'picture 456 x 306, signed on margin, signing space 10, paper 500 x 360',
	},
	{
		code: 'edition-clash',
		level: 'stop',
		told: 'picture 456 x 306, edition 26/25',
		says: 'number 26 is not in an edition of 25',
		mend: 'Clear edition',
		not: 'picture 456 x 306, edition 25/25',
	},
	{
		code: 'edition-clash',
		level: 'stop',
		told: 'picture 456 x 306, edition XI/X',
		says: 'number XI is not in an edition of X',
		mend: 'Clear edition',
		not: 'picture 456 x 306, edition X/X',
	},
	{
		code: 'edition-clash',
		level: 'look',
		told: 'picture 456 x 306, edition 3/25, copies 2',
		says: 'Edition 3/25 is one print, and 2 copies are typed',
		mend: 'Set copies to 1',
		not: 'picture 456 x 306, edition open, copies 2',
	},
	{
		code: 'edition-clash',
		level: 'look',
		told: 'picture 456 x 306, edition A/P 1/3, copies 2',
		says: 'Edition A/P 1/3 is one print',
		mend: 'Clear edition',
		not: 'picture 456 x 306, edition A/P 1/3',
	},
	{
		code: 'lip-shrinks',
		level: 'look',
		told: 'picture 516 x 339, top 60',
		says: '39.9 of the 45 side shows in the frame “Oak”, under your smallest border of 40 mm',
		mend: 'Set picture width to 486',
		not: 'picture 512 x 339, top 60',
		show: stocked({ frames }),
	},
	{
		code: 'too-deep',
		level: 'stop',
		told: 'picture 456 x 306, board Foam, glazing glass',
		says: 'Glazing, mount, print, undermount and backing are about 2 + 5 + 0.3 + 1.4 + 3 = 11.7 deep, 1.7 mm more than the rebate’s 10',
		mend: 'Clear board',
		not: 'picture 456 x 306, board Thin, glazing glass',
		show: stocked({ frames: [{ ...frames[0], depth: '10 mm' }], undermount: 'White' }),
	},
	// An inner mount is as thick as its own board.
	{
		code: 'too-thick',
		level: 'stop',
		told: 'picture 456 x 306, board White, inner mount 5, inner board Foam',
		says: 'Mounts and print are about 1.4 + 5 + 0.3 = 6.7 thick, more than the 4 mm allowed',
		mend: 'Clear inner board',
		not: 'picture 456 x 306, board White, inner mount 5, inner board Thin',
		show: stocked({ limits: { thickness: '4 mm' } }),
	},
	{
		code: 'too-deep',
		level: 'stop',
		told: 'picture 456 x 306, board White, inner mount 5, inner board Foam',
		says: '2 + 1.4 + 5 + 0.3 + 1.4 + 3 = 13.1 deep, 1.1 mm more than',
		mend: 'Clear inner board',
		not: 'picture 456 x 306, board White, inner mount 5, inner board Thin',
		show: stocked({ frames, pointsRoom: '1 mm', undermount: 'White' }),
	},
	// The lip and the bevel hide of the outer mount's border what its own board is thick.
	{
		code: 'lip-shrinks',
		level: 'look',
		told: 'picture 506 x 339, top 60, board Foam, inner mount 5, inner board Thin',
		says: '36 of the 45 side shows in the frame',
		mend: 'Clear board',
		not: 'picture 506 x 339, top 60, board Thin, inner mount 5, inner board Foam',
		show: stocked({ frames, leastBorder: '39 mm' }),
	},
	{
		code: 'no-board',
		level: 'stop',
		told: 'picture 456 x 306, board White, inner mount 5, inner board Nix',
		says: 'There is no “Nix” for the inner mount in stock',
		mend: 'Clear inner board',
		not: 'picture 456 x 306, board White, inner mount 5, inner board Thin',
		show: stocked({}),
	},
	{
		code: 'no-board',
		level: 'stop',
		told: 'picture 446 x 296, inner mount 5',
		says: 'The inner mount’s blank, 72 mm smaller a side, does not reach behind the mount’s top of 71',
		mend: 'Clear inner mount',
		not: 'picture 436 x 286, inner mount 5',
		show: stocked({ innerBlankSmaller: '72 mm' }),
	},
	{
		code: 'past-guide',
		level: 'look',
		told: 'shape 1:1',
		says: 'Side 149. The cutter’s guide goes from 30 mm to 100 mm',
		not: 'shape 3:2',
		show: stocked({ bench: { kind: 'guide', greatest: '100 mm', least: '30 mm' } }),
	},
	{
		code: 'past-guide',
		level: 'look',
		told: 'picture 456 x 306, inner mount 20',
		says: 'The inner mount’s bottom 75. The cutter’s guide goes to 73 mm',
		not: 'picture 490 x 340', // as wide as the outer mount of the other
		show: stocked({ bench: { kind: 'guide', greatest: '73 mm', inner: 'own blank' } }),
	},
	{
		code: 'past-guide',
		level: 'look',
		told: 'picture 456 x 306, inner mount 20',
		says: 'The inner mount’s bottom 78. The cutter’s guide goes to 76 mm',
		not: 'picture 490 x 340',
		show: stocked({ bench: { kind: 'guide', greatest: '76 mm' } }),
	},
];

describeRules(cases);

describe('another frame, glazing or backing of the list is offered where it mends', () => {
	const labels = (line: string, code: string, more: TypedSettings) =>
		resultOf(rowOf(line), stocked(more))
			.findings.find((one) => one.code === code)!
			.mends.map(({ label }) => label);
	const pane = { width: '1200 mm', height: '900 mm' };
	const glazing = [
		{ ...pane, name: 'Thick', material: 'glass', thickness: '6 mm' },
		{ ...pane, name: 'Clear', material: 'acrylic', thickness: '2 mm' },
	];

	test('a deeper frame, or a thinner glazing, for what is too deep', () => {
		const deep = { ...frames[0], name: 'Box', depth: '30 mm' };
		expect(labels('picture 456 x 306', 'too-deep', { frames: [...frames, deep], glazing })).toEqual([
			'Set frame to “Box”',
			'Set glazing to “Clear”',
		]);
		const small = { ...deep, rebateWidth: '503 mm' };
		expect(labels('picture 456 x 306', 'too-deep', { frames: [...frames, small], glazing: [glazing[0]] })).toEqual([]);
	});

	test('a frame with a narrower lip, for a border of which too little shows', () => {
		const narrow = { ...frames[0], name: 'Thin lip', lip: '4 mm' };
		expect(labels('picture 516 x 339, top 60', 'lip-shrinks', { frames: [...frames, narrow] })).toContain(
			'Set frame to “Thin lip”',
		);
	});

	test('a frame in the place of one whose legs are longer than its sticks', () => {
		const made = { name: 'Made', moulding: 20, lip: 6, stick: '600 mm' };
		const line = 'picture 456 x 306, frame Made';
		expect(labels(line, 'no-frame', { frames: [made, ...frames] })).toContain('Set frame to “Oak”');
	});

	test('a thinner backing for what is too deep, a lighter one for what is heavy', () => {
		const backing = [
			{ ...pane, name: 'Board', thickness: '6 mm', density: 0.8 },
			{ ...pane, name: 'Card', thickness: '2 mm', density: 0.3 },
		];
		// 2 + 1.4 + 0.3 + 6 = 9.7 of 11 mm, with the 2 mm of card 5.7
		const shallow = [{ ...frames[0], depth: '11 mm' }];
		expect(labels('picture 456 x 306', 'too-deep', { frames: shallow, backing })).toEqual(['Set backing to “Card”']);
		// 0.27 m² × (2·2.5 + 1.4·0.7 + 0.3·0.7 + 6·0.8) = 2.97 kg; with the card 1.83
		const plain = [{ ...frames[0], moulding: 20, weight: 0, depth: '30 mm' }];
		const hanging = { kind: 'two hooks', rating: '7.5 kg' };
		expect(labels('picture 456 x 306', 'heavy', { frames: plain, backing, hanging })).toEqual([
			'Set backing to “Card”',
		]);
	});

	test('a lighter frame for what is heavy', () => {
		const plain = [
			{ ...frames[0], name: 'Iron', moulding: 20, weight: 2, depth: '30 mm' },
			{ ...frames[0], name: 'Pine', moulding: 20, weight: 0.2, depth: '30 mm' },
		];
		// 2.2 m of perimeter: 4.4 kg of iron, 0.4 kg of pine; the rest 2.2 kg
		const hanging = { kind: 'two hooks', rating: '12 kg' };
		expect(labels('picture 456 x 306, frame Iron', 'heavy', { frames: plain, hanging })).toContain(
			'Set frame to “Pine”',
		);
	});

	test('a lighter glazing, for what is heavier than its fixing may hold', () => {
		const plain = [{ ...frames[0], moulding: 20, weight: 0, depth: '30 mm' }];
		// 0.27 m² × (6·2.5 + 1.1·0.7 + 0.3·0.7 + 3·0.7) = 4.88 kg; with 2 mm of acrylic 1.474 kg, and four times that 5.9
		const hanging = { kind: 'two hooks', rating: '6 kg' };
		expect(labels('picture 456 x 306', 'heavy', { frames: plain, glazing, hanging })).toEqual([
			'Set glazing to “Clear”',
		]);
		expect(
			labels('picture 456 x 306', 'heavy', { frames: plain, glazing, hanging: { ...hanging, rating: '5.8 kg' } }),
		).toEqual([]);
	});
});

describe('another paper of the list, or another place on it', () => {
	const papers = [
		{ name: 'Rag', width: 329, height: 483, margin: 5 },
		{ name: 'Small', width: 210, height: 297, margin: 3 },
		{ name: 'Large', width: 420, height: 594, margin: 5 },
		{ name: 'Roll', width: 432, roll: '15 m', margin: 3 },
	];
	const labels = (line: string, code: string) =>
		resultOf(rowOf(line), { ...wideShow, papers })
			.findings.find((one) => one.code === code)!
			.mends.map(({ label }) => label);
	const others = ['Set paper to “Rag”, 329 × 483', 'Set paper to “Large”, 420 × 594', 'Set paper to “Roll”, 432 wide'];

	test.each<[code: string, line: string, mends: readonly string[]]>([
		['paper-bounds', 'shape 3:2, paper Small', [...others, 'Clear paper and don’t check it']],
		[
			'paper-margin',
			'picture 475 x 310, paper Rag',
			[...others.slice(1), 'Set picture width to 466', 'Clear paper and don’t check it'],
		],
		// The picture of 200 leaves 97 of the paper’s 297: in its middle 48½, and 49 on the ruler.
		[
			'paper-margin',
			'picture 200 x 150, paper Small, margin left 95',
			['Clear margin left', 'Set margin left to 49', ...others, 'Clear paper and don’t check it'],
		],
		[
			'paper-short',
			'picture 200 x 150, paper Small, margin left 100',
			['Clear margin left', 'Set margin left to 49', ...others, 'Clear paper and don’t check it'],
		],
		['needs-paper', 'mounting float, picture 300 x 200', others],
		['needs-paper', 'picture 420 x 280, reveal 6', ['Clear reveal', ...others]],
	])('%s of %s', (code, line, mends) => expect(labels(line, code)).toEqual(mends));
});

test('a guide that cuts short of what it reads has to go further than the border', () => {
	const widest = (bench: object) => codesOf('shape 3:2', stocked({ bench: { greatest: '78 mm', ...bench } }));
	expect(widest({ kind: 'guide' })).not.toContain('past-guide'); // its bottom is 78
	expect(widest({ kind: 'guide', correction: '-0.5 mm' })).toContain('past-guide');
	expect(widest({ kind: 'straight edge', correction: '-0.5 mm' })).not.toContain('past-guide');
});

test('a border within the guide’s range that asks for a setting past it is told with that setting', () => {
	const bench = { kind: 'guide', greatest: '79 mm', least: '50 mm', correction: '-0.5 mm' };
	const [said] = resultOf(rowOf('picture 456 x 306'), stocked({ bench })).findings;
	expect(said?.message).toBe('Bottom 79, the guide set to 79.5. The cutter’s guide goes from 50 mm to 79 mm.');
});

test('a straight edge has no guide to go past', () => {
	const at = (kind: string) =>
		codesOf('picture 456 x 306', stocked({ bench: { kind, greatest: '60 mm', least: '50 mm' } }));
	expect(at('guide')).toContain('past-guide');
	expect(at('straight edge')).not.toContain('past-guide');
});

test('a border that asks for a guide set to less than nothing is past the guide, whatever it holds', () => {
	const said = (correction: string) =>
		resultOf(rowOf('picture 456 x 306, side 72, top 3'), { ...wideShow, bench: { kind: 'guide', correction } })
			.findings.filter(({ code }) => code === 'past-guide')
			.map(({ message }) => message);
	expect(said('5 mm')).toEqual(['Top 3 and bottom 3. The cutter’s guide would be set to −2 mm.']);
	expect(said('2 mm')).toEqual([]);
});

test('paper is held by a length of the show’s own defaults: 5 mm, or a quarter of an inch', () => {
	const said = (line: string, show: TypedSettings) =>
		resultOf(rowOf(line), show)
			.findings.filter(({ code }) => code === 'paper-short')
			.map(({ message }) => message)
			.join(' ');
	expect(said('picture 14 x 11, reveal 1/2, paper 15 3/8 x 14', { unit: 'in' })).toContain(
		'only 3/16 in behind the mount at the sides and needs 1/4 in',
	);
	expect(said('picture 14 x 11, reveal 1/2, paper 15 1/2 x 14', { unit: 'in' })).toBe('');
	expect(said('picture 360 x 270, reveal 10, paper 388 x 320', {})).toContain(
		'only 4 mm behind the mount at the sides and needs 5 mm',
	);
	expect(said('picture 360 x 270, reveal 10, paper 390 x 320', {})).toBe('');
});

test('what does not fit of a float is its paper, which has no window', () => {
	const said = (line: string) => resultOf(rowOf(`mounting float, paper 400 x 300, ${line}`)).findings[0]?.message;
	expect(said('picture 300 x 200, mount 500 x 250')).toBe(
		'The paper’s height 300 is 50 larger than the mount’s 250 mm.',
	);
	expect(said('picture 300 x 200, mount 500 x 400, top 110')).toBe(
		'A border of 110 and a paper of 300 use 410 of the mount’s height 400 mm, which leaves −10 for the other border.',
	);
});
