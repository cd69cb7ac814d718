import { expect, test } from 'vitest';
import { isOwnScript } from '../../../src/app/trustedUrls.ts';

const page = 'https://prints.example/some/where/index.html?from=home';

test.each([
	['./sw.js', true],
	['sw.js', true],
	['https://prints.example/some/where/assets/packing.worker-1a2b.js', true],
	['/some/where/assets/a.js', true],
	['../sw.js', false],
	['/some/whereabouts/sw.js', false],
	['/sw.js', false],
	['assets/../../sw.js', false],
	['//elsewhere.example/some/where/sw.js', false],
	['http://prints.example/some/where/sw.js', false],
	['https://prints.example:444/some/where/sw.js', false],
	['https://prints.example@elsewhere.example/some/where/sw.js', false],
	['blob:https://prints.example/some/where/1', false],
	['data:text/javascript,1', false],
	['javascript:1', false],
])('%s: %s', (url, isOwn) => {
	expect(isOwnScript(url, page)).toBe(isOwn);
});

test('what is no address is a slip of ours', () => {
	expect(() => isOwnScript('https://', page)).toThrow(TypeError);
});
