import { readFile } from 'node:fs/promises';
import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goByAddress } from '../harness/goByAddress.ts';
import { pagesOf } from '../harness/pdfPages.ts';
import { resize } from '../harness/resize.ts';
import { landscapeTablet, onStage, phone } from '../harness/stage.ts';
import { openShow, showOf } from '../harness/openShow.ts';
import { oneStage } from '../screens/oneStage.ts';
import {
	animatedGif,
	dropFiles,
	paintedAvif,
	paintedPicture,
	pasteFiles,
	plainJpeg,
	plainPng,
	plainTiff,
	pngHeader,
	stillHeader,
	webpWithOrientation,
	withOrientation,
} from './pictureFiles.ts';

const inWindow = oneStage({ isPlanned: false });

/** The rows on disk, and what is kept of the pictures of each. */
const onDisk = (page: Page) =>
	page.evaluate(async () => {
		const read = async (name: string, store: string) => {
			const opening = indexedDB.open(name);
			await new Promise((resolve) => (opening.onsuccess = resolve));
			const tx = opening.result.transaction(store);
			const [keys, values] = [tx.objectStore(store).getAllKeys(), tx.objectStore(store).getAll()];
			await new Promise((resolve) => (tx.oncomplete = resolve));
			opening.result.close();
			return { keys: keys.result as string[], values: values.result as unknown[] };
		};
		const rows = (await read('evenhang', 'rows')).values as {
			typed: Record<string, string>;
			order: number;
			picture?: { hash: string };
		}[];
		rows.sort((a, b) => a.order - b.order);
		const previews = await read('evenhang pictures', 'preview');
		/** The colours of the four corners of each preview: r, g, b, w. */
		const corners = new Map<string, string>();
		const sizes = new Map<string, string>();
		for (const [place, key] of previews.keys.entries()) {
			const { bytes, type } = previews.values[place] as { bytes: ArrayBuffer; type: string };
			const bitmap = await createImageBitmap(new Blob([bytes], { type }));
			const { width, height } = bitmap;
			const canvas = new OffscreenCanvas(width, height);
			const context = canvas.getContext('2d')!;
			context.drawImage(bitmap, 0, 0);
			const at = (x: number, y: number) => {
				const [red, green, blue] = context.getImageData(Math.floor(x * width), Math.floor(y * height), 1, 1).data;
				const is = [red!, green!, blue!].map((value) => value > 128);
				return is.every(Boolean) ? 'w' : (['r', 'g', 'b'][is.indexOf(true)] ?? '-');
			};
			corners.set(key, [at(0.2, 0.2), at(0.8, 0.2), at(0.2, 0.8), at(0.8, 0.8)].join(''));
			sizes.set(key, `${width} x ${height}`);
		}
		return rows.map(({ typed, picture }) => ({
			title: typed['title'],
			pixels: typed['pixels'],
			corners: corners.get(picture?.hash ?? ''),
			size: sizes.get(picture?.hash ?? ''),
		}));
	});

const add = (page: Page) => page.getByRole('button', { name: /^Add pictures: / });

test('files of all kinds and orientations: shapes right to the pixel, what cannot be read is named', () =>
	inWindow(async (page) => {
		const jpeg = await paintedPicture(page, 96, 64);
		const webp = await paintedPicture(page, 96, 64, 'image/webp');
		const large = await paintedPicture(page, 2400, 1600);
		const oriented = [1, 2, 3, 4, 5, 6, 7, 8].map((orientation) => ({
			name: `Turned ${'abcdefgh'[orientation - 1]}.jpg`,
			bytes: withOrientation(jpeg, orientation, orientation % 2 === 0),
		}));
		const text = new TextEncoder();
		await dropFiles(page, [
			...oriented,
			{ name: 'Wrong ending.png', bytes: large },
			{ name: 'Deep.png', bytes: plainPng(30, 20, { bits: 16 }) },
			{ name: 'Turned png.png', bytes: plainPng(30, 20, { orientation: 6 }) },
			{ name: 'Turned webp.webp', bytes: webpWithOrientation(webp, 96, 64, 8) },
			{ name: 'Four inks.jpg', bytes: plainJpeg(40, 24, { components: 4 }) },
			{ name: 'Progressive.jpg', bytes: plainJpeg(40, 24, { isProgressive: true }) },
			{ name: 'Moving.gif', bytes: animatedGif() },
			{ name: 'Avif.avif', bytes: paintedAvif() },
			{ name: 'Avif turned.avif', bytes: paintedAvif(3) },
			{ name: 'Avif turned and mirrored.avif', bytes: paintedAvif(1, 'down') },
			{ name: 'Empty.jpg', bytes: new Uint8Array() },
			{ name: 'Huge.png', bytes: pngHeader(60000, 60000) },
			{ name: 'Cut short.jpg', bytes: large.slice(0, 40) },
			{ name: 'Drawing.svg', bytes: text.encode('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"/>') },
			{ name: 'Scan.tif', bytes: plainTiff(30, 20) },
			{ name: 'Phone.heic', bytes: stillHeader('heic', 4032, 3024) },
			{ name: 'Raw.dng', bytes: text.encode('IIU\0\0\0') },
			{ name: 'Text.jpg', bytes: text.encode('title,shape') },
			{ name: 'Turned a again.jpg', bytes: oriented[0]!.bytes },
		]);
		await add(page).waitFor();
		const unread = page.locator('.unread li');
		expect(await unread.allInnerTexts()).toEqual([
			'Empty.jpg: it is empty.',
			'Huge.png: it has 60000 × 60000 pixels, 3600 megapixels; at most 250 can be opened.',
			'Cut short.jpg: it is damaged: its size cannot be read.',
			'Drawing.svg: an SVG is a drawing that may hold programs, and is not opened as a picture. Export it as PNG or JPEG.',
			'Scan.tif: it is a TIFF, which this browser does not read, or it is damaged. Save it as JPEG or PNG, and add that.',
			'Phone.heic: it is a HEIC, as phones make them, which this browser does not read, or it is damaged. Save it as JPEG or PNG, and add that.',
			'Raw.dng: it is of a kind that this browser does not read, or it is damaged. Save it as JPEG or PNG, and add that.',
			'Text.jpg: it is no picture.',
		]);
		expect(await add(page).innerText()).toBe('Add pictures: 18 new prints');
		await page.getByText('the same picture as Turned a.jpg; left out').waitFor();
		await add(page).click();
		await page.getByText('18 new prints at the end of the list.').waitFor();
		await page.getByText('Saved', { exact: true }).waitFor();
		// What the camera saw, whichever way it was held: where EXIF says that its first row and column are.
		const seen = ['rgbw', 'grwb', 'wbgr', 'bwrg', 'rbgw', 'brwg', 'wgbr', 'gwrb'];
		const upright = { pixels: '96 x 64', size: '96 x 64' };
		const onItsSide = { pixels: '64 x 96', size: '64 x 96' };
		const rows = await onDisk(page);
		expect(rows.slice(0, 8)).toEqual(
			seen.map((corners, at) => ({ title: `Turned ${'abcdefgh'[at]}`, corners, ...(at < 4 ? upright : onItsSide) })),
		);
		expect(rows.slice(8)).toEqual([
			{ title: 'Wrong ending', pixels: '2400 x 1600', corners: 'rgbw', size: '1024 x 683' },
			{ title: 'Deep', pixels: '30 x 20', corners: '----', size: '30 x 20' },
			{ title: 'Turned png', pixels: '20 x 30', corners: '----', size: '20 x 30' },
			// As the browser shows it, which turns no WebP.
			{ title: 'Turned webp', pixels: '96 x 64', corners: 'rgbw', size: '96 x 64' },
			{ title: 'Four inks', pixels: '40 x 24', corners: expect.any(String) as string, size: '40 x 24' },
			{ title: 'Progressive', pixels: '40 x 24', corners: expect.any(String) as string, size: '40 x 24' },
			{ title: 'Moving', pixels: '2 x 1', corners: expect.any(String) as string, size: '2 x 1' },
			{ title: 'Avif', pixels: '96 x 64', corners: 'rgbw', size: '96 x 64' },
			// Turned as EXIF's sixth and fifth way.
			{ title: 'Avif turned', pixels: '64 x 96', corners: seen[5], size: '64 x 96' },
			{ title: 'Avif turned and mirrored', pixels: '64 x 96', corners: seen[4], size: '64 x 96' },
		]);
		// One step back takes all of them away.
		await page.getByRole('button', { name: /^Undo/ }).first().click();
		await page.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
	}));

test('a picture on the clipboard and files copied in a file manager are pasted, wherever one is', () =>
	inWindow(async (page, stage) => {
		await stage.context.grantPermissions(['clipboard-read', 'clipboard-write']);
		const painted = Buffer.from(await paintedPicture(page, 96, 64, 'image/png')).toString('base64');
		// As another program copies a picture: pixels and no name, with the words of the page that it was on.
		await page.evaluate(async (painted) => {
			const png = new Blob([Uint8Array.from(atob(painted), (sign) => sign.charCodeAt(0))], { type: 'image/png' });
			const html = new Blob(['<img src="quay.png" alt="">'], { type: 'text/html' });
			await navigator.clipboard.write([new ClipboardItem({ 'image/png': png, 'text/html': html })]);
		}, painted);
		await page.keyboard.press('Control+v');
		await page.getByText('96 × 64: new print').waitFor();
		await add(page).click();
		await page.getByText('1 new print at the end of the list.').waitFor();
		// Into a cell that may be typed into: the pictures are meant, not the names that come with them.
		await page.getByRole('gridcell').nth(2).click();
		const files = [
			{ name: '2 Quay.jpg', bytes: await paintedPicture(page, 64, 96) },
			{ name: '3 Weir.png', bytes: plainPng(30, 20) },
		];
		await pasteFiles(page, files, files.map(({ name }) => `/pictures/${name}`).join('\n'));
		await add(page).click();
		await page.getByText('2 new prints at the end of the list.').waitFor();
		await page.getByText('Saved', { exact: true }).waitFor();
		const rows = await onDisk(page);
		expect(rows.map(({ title, pixels, corners }) => [title, pixels, corners])).toEqual([
			['image', '96 x 64', 'rgbw'],
			['Quay', '64 x 96', 'rgbw'],
			['Weir', '30 x 20', '----'],
		]);
	}));

test('the button Paste takes a picture too, the text where there is one, and says where there is neither', () =>
	inWindow(async (page, stage) => {
		await stage.context.grantPermissions(['clipboard-read', 'clipboard-write']);
		const copy = async (width: number, height: number, text?: string) => {
			const painted = Buffer.from(await paintedPicture(page, width, height, 'image/png')).toString('base64');
			await page.evaluate(
				async ({ painted, text }) => {
					const bytes = Uint8Array.from(atob(painted), (sign) => sign.charCodeAt(0));
					const words = text === undefined ? {} : { 'text/plain': new Blob([text], { type: 'text/plain' }) };
					const picture = { 'image/png': new Blob([bytes], { type: 'image/png' }) };
					await navigator.clipboard.write([new ClipboardItem({ ...picture, ...words })]);
				},
				{ painted, text },
			);
		};
		const paste = page.getByRole('button', { name: 'Paste', exact: true });
		await openShow(page, showOf('Salt', settings, [{ number: '1', title: 'Tide' }]));
		const title = page.getByRole('grid').getByRole('rowheader').nth(1);
		await title.click();
		await copy(96, 64);
		await paste.click();
		await page.getByText('96 × 64: new print').waitFor();
		await add(page).click();
		await page.getByText('1 new print at the end of the list.').waitFor();
		// Cells copied in a spreadsheet come with a picture of them.
		await title.click();
		await copy(64, 96, 'Ebb');
		await paste.click();
		await expect.poll(() => title.innerText()).toMatch(/^Ebb/);
		await page.evaluate(() => navigator.clipboard.writeText(''));
		await paste.click();
		await page.getByText('Nothing on the clipboard can be pasted').first().waitFor();
		// A browser that gives nothing.
		await page.evaluate(() => Object.assign(navigator.clipboard, { read: undefined }));
		await paste.click();
		await page.getByText('did not let the app see what was copied').first().waitFor();
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('4');
	}));

test('pictures that are not wanted go from the device at once; one that a print has stays', () =>
	inWindow(async (page) => {
		const [one, other] = [
			{ name: 'Weir.jpg', bytes: await paintedPicture(page, 96, 64) },
			{ name: 'Quay.jpg', bytes: await paintedPicture(page, 64, 96) },
		];
		const kept = () =>
			page.evaluate(async () => {
				const opening = indexedDB.open('evenhang pictures');
				await new Promise((resolve) => (opening.onsuccess = resolve));
				const all = opening.result.transaction('small').objectStore('small').getAllKeys();
				await new Promise((resolve) => (all.onsuccess = resolve));
				opening.result.close();
				return all.result.length;
			});
		await dropFiles(page, [one]);
		await add(page).click();
		await page.getByText('1 new print at the end of the list.').waitFor();
		await dropFiles(page, [one, other]);
		await add(page).waitFor();
		expect(await kept()).toBe(2);
		await page.getByRole('button', { name: 'Cancel' }).click();
		await expect.poll(kept).toBe(1);
	}));

test('a show whose pictures are elsewhere says how many, until their files come again or the note is hidden', () =>
	inWindow(async (page) => {
		const tide = { name: 'Tide.jpg', bytes: await paintedPicture(page, 96, 64) };
		const weir = { name: 'Weir.jpg', bytes: await paintedPicture(page, 64, 96) };
		const rows = 'title,picture file,pixels\nTide,Tide.jpg,96 x 64\nEbb,Tide.jpg,96 x 64\nWeir,weir.jpg,\nQuay,,';
		await dropFiles(page, [{ name: 'rows.csv', bytes: new TextEncoder().encode(rows) }]);
		const note = page.getByRole('status', { name: 'Pictures not here' });
		await note.getByText('2 pictures are not on this device.').waitFor();
		expect((await note.boundingBox())!.height).toBeLessThanOrEqual(48); // a line, as high as its buttons
		const go = (place: string) => goByAddress(page, place);
		await go('bench');
		await page.getByRole('heading', { name: 'Bench' }).first().waitFor();
		expect(await note.count()).toBe(0);
		await go('across');
		const [chooser] = await Promise.all([
			page.waitForEvent('filechooser'),
			note.getByRole('button', { name: 'Choose files' }).click(),
		]);
		await chooser.setFiles([{ name: tide.name, mimeType: 'image/jpeg', buffer: Buffer.from(tide.bytes) }]);
		await add(page).click();
		await note.getByText('1 picture is not on this device.').waitFor();
		await note.getByRole('button', { name: 'Hide this note' }).click();
		expect(await note.count()).toBe(0);
		await go('prints');
		await page.getByRole('gridcell').first().waitFor();
		expect(await note.count()).toBe(0);
		await page.getByText('Saved', { exact: true }).waitFor();
		// The next opening says it again, for nobody brought it.
		await page.reload();
		await note.getByText('1 picture is not on this device.').waitFor();
		await dropFiles(page, [weir]);
		await page.getByText('by the file’s name').waitFor();
		await add(page).click();
		await page.getByText('1 print has a picture now.').waitFor();
		await note.waitFor({ state: 'detached' });
	}));

/** The picture of the active print: small ones stand beside the titles too. */
const inPanel = '.beside svg image';

/** How many pictures of prints are on the screen, each of them loaded. @param of where they are, and whether drawn or beside words */
const drawn = (page: Page, of = 'svg image') =>
	page.evaluate(async (of) => {
		const all = [...document.querySelectorAll(of)].map(
			(image) => image.getAttribute('href') ?? image.getAttribute('src'),
		);
		const hrefs = all.filter((href) => href?.startsWith('blob:'));
		await Promise.all(hrefs.map((href) => Object.assign(new Image(), { src: href }).decode()));
		return hrefs.length;
	}, of);

/** The pixels of the first picture that is drawn. */
const shapeDrawn = (page: Page) =>
	page.evaluate(async (of) => {
		const src = document.querySelector(of)?.getAttribute('href') ?? '';
		const image = Object.assign(new Image(), { src });
		await image.decode();
		return `${image.naturalWidth} x ${image.naturalHeight}`;
	}, inPanel);

test('room for pictures is watched, and what comes in is seen in another tab at once', () =>
	inWindow(async (page, stage) => {
		const ebb = [{ name: 'Ebb.png', bytes: plainPng(30, 20) }];
		const isRefused = async () => {
			await page.getByRole('heading', { name: '“Ebb.png” gives no picture' }).waitFor();
			await page.getByText('There is no room left on this device.').waitFor();
			await page.getByRole('button', { name: 'Close', exact: true }).click();
		};
		// This browser says the same room to every page, others say what there is.
		const says = (usage: number) =>
			page.evaluate((usage) => {
				navigator.storage.estimate = () => Promise.resolve({ usage, quota: 40e6 });
			}, usage);
		await says(31e6);
		await dropFiles(page, ebb);
		await isRefused();
		await says(25e6);
		await dropFiles(page, ebb);
		await page.getByText(/^Room runs short: 15 MB of the 40 MB that this browser gives the app are left/).waitFor();
		await add(page).click();
		await expect.poll(() => drawn(page, inPanel)).toBe(1);

		const other = await stage.context.newPage();
		await other.goto(stage.address);
		await expect.poll(() => drawn(other, inPanel)).toBe(1);
		await dropFiles(page, [{ name: 'Quay.png', bytes: plainPng(20, 30) }]);
		await add(page).click();
		await other.getByRole('rowheader', { name: 'Quay' }).click();
		await expect.poll(() => shapeDrawn(other)).toBe('20 x 30');
		await other.close();
	}));

/** What is kept of pictures, as texts, by their hashes. */
const previews = (page: Page) =>
	page.evaluate(async () => {
		const opening = indexedDB.open('evenhang pictures');
		await new Promise((resolve) => (opening.onsuccess = resolve));
		const tx = opening.result.transaction(['preview', 'small']);
		const all = [tx.objectStore('preview').getAll(), tx.objectStore('small').getAll()];
		await new Promise((resolve) => (tx.oncomplete = resolve));
		opening.result.close();
		return all.flatMap(({ result }) =>
			(result as { bytes: ArrayBuffer }[]).map(({ bytes }) => [...new Uint8Array(bytes)].join()),
		);
	});

const settings = {
	...{ unit: 'mm', mountSize: '600 x 450 mm', border: 70 },
	boards: [{ name: 'Chalk', width: 1200, height: 900 }],
	frames: [{ name: 'Oak', moulding: 20, lip: 6, depth: 40 }],
	walls: [{ name: 'North', length: 9000, height: 2800 }],
};

test('a show packed with its pictures comes in by “open with”', () =>
	inWindow(async (page, stage) => {
		await dropFiles(page, [{ name: 'Tide.jpg', bytes: await paintedPicture(page, 96, 64) }]);
		await add(page).click();
		await expect.poll(() => drawn(page, inPanel)).toBe(1);
		await page.getByRole('button', { name: 'Files' }).click();
		const [file] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('button', { name: 'Back up this show' }).click(),
		]);
		const packed = (await readFile(await file.path())).toString('base64');
		const other = await stage.context.newPage();
		// What the system does when a file is opened with an app that is installed.
		await other.addInitScript((packed) => {
			const bytes = Uint8Array.from(atob(packed), (sign) => sign.charCodeAt(0));
			const getFile = () => Promise.resolve(new File([bytes], 'Salt.evenhang.zip', { type: 'application/zip' }));
			const setConsumer = (consume: (launch: object) => void) => consume({ files: [{ getFile }] });
			Object.defineProperty(window, 'launchQueue', { value: { setConsumer } });
		}, packed);
		await other.goto(stage.address);
		await other.getByRole('heading', { name: /, 1 print$/ }).waitFor();
		await other.close();
	}));

/** How many pictures a PDF shows, all pages together. */
async function picturesOnPages(pdf: Uint8Array): Promise<number> {
	const pages = await pagesOf(new Uint8Array(pdf));
	const lists = await Promise.all(pages.map(({ page }) => page.getOperatorList()));
	return lists.flatMap(({ fnArray }) => fnArray).filter((operation) => operation === OPS.paintImageXObject).length;
}

test('pictures are matched, seen on every screen and on paper, packed, and restored without a connection', () =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await stage.isKept(page);
		await openShow(page, showOf('Salt', settings, [{ number: '2', title: 'Harbour', frame: 'Oak' }]));
		const wide = await paintedPicture(page, 900, 600);
		const tall = await paintedPicture(page, 600, 900);
		await dropFiles(page, [{ name: '1 Tide.jpg', bytes: wide }]);
		await add(page).click();
		await page.getByText('1 new print at the end of the list.').waitFor();
		// A print that is there is found by its title; the shape of the file is its own.
		await dropFiles(page, [
			{ name: 'Tide.jpg', bytes: tall },
			{ name: '2 Harbour.jpg', bytes: await paintedPicture(page, 960, 640) },
		]);
		await page.getByText('by its title, in place of 1 Tide.jpg').waitFor();
		await add(page).click();
		await page.getByText('2 prints have a picture now.').waitFor();
		await expect.poll(() => drawn(page, inPanel)).toBe(1);
		await page.getByRole('radio', { name: 'Labels' }).press('Space');
		await expect.poll(() => drawn(page, '[role=gridcell] img')).toBe(2);
		// The column of pictures is off in a click, and on again.
		await page.getByRole('button', { name: 'Columns' }).click();
		const column = page.getByRole('checkbox', { name: 'Small picture' });
		await column.uncheck();
		await expect.poll(() => drawn(page, '[role=gridcell] img')).toBe(0);
		await column.check();
		await expect.poll(() => drawn(page, '[role=gridcell] img')).toBe(2);
		await page.getByRole('button', { name: 'Columns' }).click();
		const figures = page.locator('.beside svg text').filter({ hasText: /^[\d.]+$/ });
		await expect.poll(() => figures.count()).toBeGreaterThan(0); // the drawing comes after the grid
		await page.getByRole('button', { name: 'Hide measures' }).click();
		await page.getByRole('button', { name: 'Show measures' }).waitFor();
		expect(await figures.count()).toBe(0);
		const go = (place: string) => goByAddress(page, place);
		await go('across');
		await expect.poll(() => drawn(page)).toBe(2);
		await page.getByRole('link', { name: 'Print on paper' }).click();
		await page.getByRole('heading', { name: 'On paper' }).waitFor();
		await expect.poll(() => drawn(page)).toBe(2);
		for (const name of ['Print cards', 'Frames and hinges', 'Catalogue with pictures'])
			await page.getByRole('checkbox', { name, exact: true }).check();
		await expect.poll(() => drawn(page, '.paper :is(img, svg image)')).toBe(8); // on the contact sheet too
		expect(await picturesOnPages(await page.pdf({ preferCSSPageSize: true }))).toBe(8);

		// Everywhere else where a print is drawn or named to be worked at: a sheet, each bench, the walls.
		for (const [place, of, count] of [
			['boards', 'figure svg image', 2],
			['wall', 'svg image', 2],
			['hang', 'h1 img', 1],
			['finish', 'svg image', 1],
		] as const) {
			await go(place);
			await expect.poll(() => drawn(page, of), { message: place }).toBe(count);
		}
		for (const [place, of] of [
			['knife', 'svg image'],
			['cut', '[aria-pressed] img'],
		] as const) {
			await go(place);
			await page.getByRole('button', { name: 'Next', exact: true }).click();
			await expect.poll(() => drawn(page, of), { message: place }).toBe(2);
		}
		await go('prints');
		await resize(page, phone);
		await expect.poll(() => drawn(page, '.form img'), { message: 'on a phone' }).toBe(1);
		await resize(page, landscapeTablet);
		await page.getByRole('button', { name: 'Files' }).click();
		const [file] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('button', { name: 'Back up this show' }).click(),
		]);
		expect(file.suggestedFilename()).toMatch(/\.evenhang\.zip$/);
		const packed = await readFile(await file.path());
		const before = await previews(page);
		expect(before).toHaveLength(6); // the one that the tall one replaced is there for undo

		// Another device, without a connection: nothing is kept on it but the app, no second copy of a show either.
		await page.goto(new URL('icon-192.png', stage.address).href); // where the app does not run
		await page.evaluate(async () => {
			localStorage.clear();
			for (const name of await caches.keys()) if (!name.startsWith('evenhang files')) await caches.delete(name);
		});
		await stage.stopHost();
		await page.goto('about:blank');
		const debug = await stage.context.newCDPSession(page);
		await debug.send('Storage.clearDataForOrigin', {
			origin: new URL(stage.address).origin,
			storageTypes: 'indexeddb',
		});
		await page.goto(stage.address);
		await page.getByRole('button', { name: 'Start typing' }).waitFor();
		// A file that was harmed is refused, and nothing is there of it.
		const harmed = packed.subarray(0, packed.length - 5000);
		await dropFiles(page, [{ name: 'harmed.evenhang.zip', bytes: harmed }]);
		await page.getByText('it is cut short: the end of it is missing').waitFor();
		expect(await page.getByRole('button', { name: 'Start typing' }).isVisible()).toBe(true);
		await dropFiles(page, [{ name: 'show.evenhang.zip', bytes: packed }]);
		await page.getByRole('gridcell').first().waitFor();
		await expect.poll(() => drawn(page, inPanel)).toBe(1);
		const restored = await previews(page);
		expect(restored).toHaveLength(4);
		for (const each of restored) expect(before).toContain(each);
	}));
