import { writeSync } from 'node:fs';
import { startServer } from '../../server/start-server.ts';

/** The real server on a folder until it is killed: `node feeding-child.mjs <folder>`. Says where it answers. */
const [, , folder = ''] = process.argv;
const { url } = await startServer({ folder, port: 0, host: '127.0.0.1', quiet: true, kioskFolder: null });
writeSync(1, `${url}\n`);
