import { expect, test } from 'vitest';
import { catalogueOf } from '../../../src/core/lists/catalogue.ts';
import { writeCatalogue } from '../../../src/files/catalogueCsv.ts';
import { showOf } from '../core/lists/showOf.ts';

const show = showOf(['number 1, title =Ebb, maker Ada Holm, picture 30.5 x 45.6, price 450', 'title Quay'], {
	unit: 'cm',
	mountSize: '60 x 45 cm',
	walls: [{ name: 'North', length: 400 }],
});
const source = { ...show, isSold: (place: number) => place === 0 };

test('the catalogue as a file: a print each, height before width, guarded against formulas', () => {
	const lines = catalogueOf(source, { hasPrices: true }).slice(0, 1);
	expect(writeCatalogue(lines, show.settings, { hasPrices: true })).toBe(
		'wall,number,maker,title,year,medium,height (cm),width (cm),edition,price,sold\r\n' +
			"North,1,Ada Holm,'=Ebb,,,45.6,30.5,,450,sold\r\n",
	);
});

test('without prices there is no column of them', () => {
	const lines = catalogueOf(source, { hasPrices: false });
	const text = writeCatalogue(lines, show.settings, { hasPrices: false });
	expect(text.split('\r\n')[0]).not.toContain('price');
	expect(text).not.toContain('450');
});
