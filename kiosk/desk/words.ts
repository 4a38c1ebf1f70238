/* The words every desk shares, in the kiosk's language. */
export { deskWords } from '../../shared/words/desk.en.ts';
export { labels } from '../../shared/words/labels.en.ts';
