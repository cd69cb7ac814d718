import { planCommand } from './planCommand.ts';

process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
	if (cause.code !== 'EPIPE') throw cause; // whoever read it (head, say) has seen enough
});
// npm runs a script in the project's folder; a relative path is meant from where the person stands.
const { exitCode, output, said } = await planCommand(process.argv.slice(2), process.env.INIT_CWD);
for (const line of said) console.error(line);
process.stdout.write(output);
process.exitCode = exitCode;
