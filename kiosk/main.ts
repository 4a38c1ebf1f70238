import type { LinkRefusal, RefusalText } from './link/index.ts';
import { openLink } from './link/index.ts';
import { rememberedSize, rememberedTheme } from './shell/kiosk-memory.ts';
import { shellWords } from './shell/words.ts';
import { chooseTheme, setTrueSize } from './theme/choose-theme.ts';

chooseTheme(rememberedTheme());
const size = rememberedSize();
if (size !== null) setTrueSize(size);
// The link first: every element of the frame follows it from its first moment.
await openLink((refusal: LinkRefusal): RefusalText => shellWords().linkRefusals[refusal.code]);
await import('./shell/gh-kiosk.ts');
