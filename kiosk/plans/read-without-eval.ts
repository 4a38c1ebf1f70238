import { config } from 'zod';

// The schemas would try to compile themselves; the page's content policy forbids that, and says so on the console at every start.
config({ jitless: true });
