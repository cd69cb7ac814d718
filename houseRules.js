// The rules of the house that no tool has, each a shape of syntax that is not wanted. Written once for both: oxlint looks
// for them in TypeScript (`.oxlintrc.json`), ESLint in Svelte (`eslint.config.js`).

/** A rule that says something of each node that a selector finds. */
function rule(message, ...selectors) {
	const create = (context) => {
		const report = (node) => context.report({ node, message });
		return Object.fromEntries(selectors.map((selector) => [selector, report]));
	};
	return { meta: { type: 'problem', schema: [] }, create };
}

const readCells = '/^(edition|copies|shape|paper|surface|mount|board|inner board|frame|glazing|spacer|signed on)$/';

const rules = {
	/** Relative imports name the file as it is on disk. */
	'whole-file-names': rule(
		'Say the whole file name: `./length.ts`.',
		':matches(ImportDeclaration, ExportNamedDeclaration, ExportAllDeclaration, ImportExpression)[source.value=/^\\.{1,2}\\u002F(?!.*\\.(ts|js|cjs|svelte|css|json|csv|svg|png)(\\?\\w+)?$)/]',
	),

	'named-exports': rule('Export by name.', 'ExportDefaultDeclaration'),

	/** A clock makes a result depend on more than its arguments. */
	'no-clock': rule(
		'core has no clock: pass the time in.',
		'NewExpression[callee.name="Date"]',
		'CallExpression[callee.name="Date"]',
	),

	/** What a cell says stands in the row's result: read again, it would soon be read another way. */
	'no-second-reading': rule(
		'Ask the result of the row, which has read the cell.',
		`MemberExpression:matches([object.name="typed"], [object.property.name="typed"]):matches([computed=false][property.name=${readCells}], [property.value=${readCells}])`,
		`CallExpression[callee.name=/^(parse[A-Z]\\w*|readMoney|namedSize)$/] MemberExpression:matches([object.name="typed"], [object.property.name="typed"])`,
	),

	'ask-has-mount': rule(
		'Ask hasMount.',
		'BinaryExpression[left.property.name="kind"][right.value="none"]:matches([left.object.name="mount"], [left.object.property.name="mount"])',
	),

	/** As a file is loaded, the first key would wait for it. */
	'made-when-wanted': rule(
		'What goes by a language takes up to 20 ms to make: make it when it is first wanted, by onceMade.',
		'Program > VariableDeclaration > VariableDeclarator > NewExpression[callee.object.name="Intl"]',
		'Program > ExportNamedDeclaration > VariableDeclaration > VariableDeclarator > NewExpression[callee.object.name="Intl"]',
	),

	/** The page's policy allows no inline style; `style:name={value}` is set by script and is fine. */
	'no-inline-style': rule(
		"The page's policy would drop it: use a class, or style:name={value}.",
		'SvelteAttribute[key.name="style"]',
	),

	'every-test-runs': rule(
		'Every test runs, and all of them.',
		'CallExpression[callee.type="MemberExpression"][callee.property.name=/^(only|skip|todo|skipIf|fails)$/]',
	),
};

export default { meta: { name: 'house' }, rules };
