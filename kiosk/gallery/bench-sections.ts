import { html, type TemplateResult } from 'lit';
import { longSample, piecesOf, thicknessLimits, trays } from './samples.ts';

const keypadWords = { demand: 'Thickness s, piece 7 of 13', enter: 'Enter', clear: 'Clear', backspace: 'Back', sign: 'Sign', decimal: 'Decimal sign' };
const pinWords = { label: 'PIN', enter: 'Sign', clear: 'Clear', backspace: 'Back', digits: 'digits entered' };
const stripWords = { caption: 'Thickness s, mm: readings in the order taken', piece: 'Piece', value: 'Reading, mm', standing: 'Standing' };
const tally = (name: string, rank: string) => ({ name, rank, less: name, more: name });
const half = piecesOf([[4.761, 'in'], [4.758, 'in'], [4.783, 'guard'], [4.766, 'in'], 'missing', [4.752, 'in'], 'next', 'waiting', 'waiting', 'waiting', 'waiting', 'waiting', 'waiting']);
const rejected = piecesOf([[4.761, 'in'], [4.7415, 'in'], [4.7935, 'out'], [4.766, 'in'], [4.92, 'out'], [4.7372, 'guard'], [4.754, 'in'], [4.71, 'out']]);

/** The parts of the bench, each in all its states. */
export const benchSections: readonly (readonly [string, TemplateResult])[] = [
  ['bench-sheet', html`<gh-outbox-bar link="online" link-word="Connected"></gh-outbox-bar>
    <div class="bench">
      <div class="pile">
        <gh-demand context="L-0417 · gate 40 · dimensions · letter F, normal" demand="Piece 7: thickness s" hint="Tray 2, row 6, place 3. Micrometer M-11 may type."></gh-demand>
        <gh-sample-strip .pieces=${half} .limits=${thicknessLimits} .words=${stripWords}></gh-sample-strip>
        <gh-progress label="Pieces read" value="6" max="13" text="6 of 13"></gh-progress>
      </div>
      <gh-keypad locale="en" unit="mm" value="4.762" .words=${keypadWords}></gh-keypad>
    </div>`],
  ['gh-button', html`<div class="row">
    <gh-button kind="primary">All 32 are good</gh-button><gh-button kind="primary" busy busy-word="Kept, on its way">Confirm</gh-button>
    <gh-button kind="primary" disabled>Confirm</gh-button><gh-button>Correct</gh-button><gh-button hint="1 touch">Second look</gh-button>
    <gh-button mark="hold">Hold the lot</gh-button><gh-button pressed="true">Only mine</gh-button><gh-button pressed="false">All benches</gh-button>
    <gh-button kind="grave">Scrap 240 pieces</gh-button><gh-button disabled>Correct</gh-button></div>`],
  ['gh-keypad', html`<div class="row">
    <gh-keypad locale="de" signed unit="mm" value="476,2" question="100 times the target. Is it 4,762?" .words=${keypadWords}></gh-keypad>
    <gh-keypad whole unit="pieces" value="" .words=${{ ...keypadWords, demand: 'Pieces counted' }}></gh-keypad>
    <gh-keypad busy unit="g" value="8.41" .words=${{ ...keypadWords, demand: 'Press weight' }}></gh-keypad></div>`],
  ['gh-sample-strip', html`<div class="pile">
    <gh-sample-strip .pieces=${rejected} .limits=${thicknessLimits} .words=${stripWords} show-table></gh-sample-strip>
    <gh-sample-strip .pieces=${longSample} .limits=${thicknessLimits} .words=${stripWords}></gh-sample-strip>
    <gh-sample-strip .pieces=${half} .limits=${{ ...thicknessLimits, upper: null, guardUpper: null, target: null }} .words=${stripWords}></gh-sample-strip></div>`],
  ['gh-tally-key', html`<div class="halves">
    <gh-tally-key kind="crack" rank="critical" count="0" .words=${tally('Crack', 'critical')}></gh-tally-key>
    <gh-tally-key kind="chip" rank="major" count="2" .steps=${[5]} .words=${tally('Chipped edge', 'major')}></gh-tally-key>
    <gh-tally-key kind="stain" rank="minor" count="11" .words=${tally('Stain on the face', 'minor')}></gh-tally-key>
    <gh-tally-key kind="mark" rank="minor" count="0" .words=${tally('Marking faint', 'minor')}></gh-tally-key></div>`],
  ['gh-verdict', html`<div class="pile">
    <gh-verdict state="accepted" word="Accepted" sentence="2 found in 80, accept to 5 (letter J, normal, AQL 2.5)"><p>The lot goes on to gate 50, coating.</p></gh-verdict>
    <gh-verdict state="rejected" word="Rejected" sentence="6 found in 80, reject from 6 (letter J, normal, AQL 2.5)"><p>The lot is on hold until somebody disposes of it.</p></gh-verdict>
    <gh-verdict state="next-sample" word="Second sample" sentence="4 found in 50: take 50 more, accept to 6 over both"></gh-verdict>
    <gh-verdict state="hold" word="Angehalten" sentence="Ofencharge S-118: Lage 4 hat die Dichte verfehlt."></gh-verdict>
    <gh-verdict state="waiting" word="Waiting" sentence="7 readings to come before a verdict" quiet></gh-verdict>
    <gh-verdict></gh-verdict></div>`],
  ['gh-demand', html`<gh-demand context="L-0417 · gate 60 · final visual" demand="Look at 32 pieces" hint="Trays 2 and 5, as drawn. Accept to 2.">
    <gh-button kind="primary">All 32 are good</gh-button><gh-button>Show which pieces</gh-button></gh-demand>`],
  ['gh-slip-stack gh-slip gh-traveller-head', html`<gh-traveller-head heading-level="3" subject="L-0417" what="CNMG 120408, coated, 1 200 pieces" state="open" state-word="In work at gate 40" .facts=${[{ label: 'Powder batch', text: 'P-031' }, { label: 'Furnace charge', text: 'S-118' }, { label: 'Coating charge', text: 'C-044' }, { label: 'Plan', text: 'version 7' }, { label: 'Opened', text: '4 Mar 2024' }]}></gh-traveller-head>
  <gh-slip-stack label="Traveller of L-0417" earlier="Show 312 earlier slips">
    <gh-slip number="313" at="06:12" datetime="2024-03-05T06:12" who="V. Holub" bench="Dimensions 1" sentence="Gate 40 opened: read 13 pieces, letter F, normal, form s, AQL 1.0"></gh-slip>
    <gh-slip number="314" at="06:14" who="V. Holub" bench="Dimensions 1" sentence="13 pieces drawn from trays 2 and 5" foldable .words=${{ unfold: 'Show detail', fold: 'Fold away' }}><p>Tray 2: rows 1, 3, 6, 8. Tray 5: rows 2, 5, 7.</p></gh-slip>
    <gh-slip number="315" at="06:31" who="V. Holub" bench="Dimensions 1" state="corrected" state-word="Corrected by slip 316" sentence="Piece 3 read 47.83 mm"></gh-slip>
    <gh-slip number="316" at="06:31" who="V. Holub" bench="Dimensions 1" sentence="Piece 3 corrected to 4.783 mm: slipped decimal sign"><gh-button slot="actions">Correct</gh-button></gh-slip>
    <gh-slip number="317" at="06:40" who="rules" bench="Dimensions 1" mark="accepted" mark-word="Accepted" sentence="Mean 4.7598, s 0.0081, k 1.62 ≥ 1.44 for both limits" foldable open .words=${{ unfold: 'Show detail', fold: 'Fold away' }}>
      <gh-sample-strip .pieces=${half} .limits=${thicknessLimits} .words=${stripWords}></gh-sample-strip></gh-slip>
    <gh-slip number="318" at="06:41" who="rules" bench="" mark="tightened" mark-word="Tightened" sentence="Two of the last five lots were rejected at this gate"></gh-slip>
    <gh-slip at="06:44" who="V. Holub" bench="Dimensions 1" state="kept" state-word="Kept here, not yet sent" sentence="Piece 1 read 12.703 mm"></gh-slip>
    <gh-slip at="06:45" who="V. Holub" bench="Dimensions 1" state="refused" state-word="Refused: the lot is on hold" sentence="Piece 2 read 12.698 mm"><gh-button slot="actions">Set aside</gh-button></gh-slip>
  </gh-slip-stack>`],
  ['gh-bench-row', html`<div role="list" aria-label="Waiting at this bench">
    <gh-bench-row href="#a" lot="L-0417" product="CNMG 120408" pieces="1 200 pieces" gate="40 · dimensions" demand="Read 13 pieces" state="open" state-word="In work" due="due 07:30"></gh-bench-row>
    <gh-bench-row href="#b" lot="L-0409" product="SNMA 120412" pieces="3 200 pieces" gate="60 · final visual" demand="Look at 125 pieces" state="tightened" state-word="Tightened" late due="due 05:50, 22 min late"></gh-bench-row>
    <gh-bench-row href="#c" lot="L-0398" product="TNMG 160404" pieces="800 pieces" gate="60 · final visual" demand="Waits for a disposition" state="hold" state-word="On hold" due="since yesterday"></gh-bench-row>
    <gh-bench-row href="#d" lot="L-0420" product="DCMT 11T304" pieces="5 000 pieces" gate="60 · final visual" demand="Take the second sample" state="next-sample" state-word="Second sample" due=""></gh-bench-row></div>`],
  ['gh-select-list', html`<div class="halves">
    <gh-select-list label="What becomes of the lot" value="sort" .options=${[{ value: 'sort', text: 'Sort every piece', hint: 'then inspect again' }, { value: 'concession', text: 'Concession', hint: 'stated on the certificate', mark: 'concession' }, { value: 'scrap', text: 'Scrap', mark: 'scrapped' }, { value: 'recoat', text: 'Recoat', hint: 'not for this product', disabled: true }]}></gh-select-list>
    <gh-select-list label="Seen on the piece" multiple columns="2" .values=${['chip']} error="Name at least one more." .options=${[{ value: 'chip', text: 'Chip' }, { value: 'crack', text: 'Crack' }, { value: 'burr', text: 'Burr' }, { value: 'stain', text: 'Stain' }]}></gh-select-list></div>`],
  ['gh-pin-pad gh-signature', html`<div class="pile"><gh-signature meaning="Released by" who="M. Sandoval" statement="Every gate of L-0417 has passed or stands under a concession named here." .words=${pinWords}><p>Certificate 2024-0417, 3 pages, as shown.</p></gh-signature>
    <gh-pin-pad .words=${{ ...pinWords, label: 'PIN of V. Holub', enter: 'Take over this bench' }} error="This PIN does not fit the badge. 2 tries left."></gh-pin-pad></div>`],
  ['gh-notice', html`<div class="pile">
    <gh-notice kind="refusal" happened="Piece 7 was looked at before." kept="12 pieces looked at, all as entered. Nothing was added." next="Look at the next piece, or correct on the earlier slip." dismiss="Understood"></gh-notice>
    <gh-notice kind="fault" happened="The plant's store does not answer." kept="Your entry is kept here." next="Go on working; it is sent again by itself."></gh-notice>
    <gh-notice kind="empty" happened="Nothing waits at this bench." next="Scan a traveller to open it."></gh-notice>
    <gh-notice kind="loading" happened="Fetching the traveller of L-0417"></gh-notice>
    <gh-notice kind="offline" happened="No network since 14:02." kept="7 readings are kept here." next="Go on working. They are sent when the network is back."><gh-button>Show what is kept</gh-button></gh-notice>
    <gh-notice kind="done" happened="All 7 readings have arrived."></gh-notice></div>`],
  ['gh-outbox-bar', html`<div class="pile"><gh-outbox-bar link="online" link-word="Connected"></gh-outbox-bar>
    <gh-outbox-bar link="sending" link-word="Connected" kept-word="3 readings on their way"></gh-outbox-bar>
    <gh-outbox-bar link="offline" link-word="No network" kept-word="7 readings kept here" refused-word="1 refused" open-word="Show them"></gh-outbox-bar></div>`],
  ['gh-caution', html`<gh-caution word="Caution" text="Carbide dust: wet cleaning only, gloves on." rule="Follow your site's rules and safety data sheets."></gh-caution>`],
  ['gh-tray-map', html`<div class="pile">
    <gh-tray-map .carriers=${trays} .words=${{ caption: '7 pieces to take, seed 8812', place: 'Tray', row: 'row', column: 'place', take: 'take, in this order' }} .list=${['1: tray 2, row 1, place 4', '2: tray 2, row 3, place 9', '3: tray 2, row 6, place 2', '4: tray 2, row 8, place 10', '5: tray 5, row 2, place 2', '6: tray 5, row 5, place 7', '7: tray 5, row 7, place 1']}></gh-tray-map>
    <gh-tray-map shape="barrel" .carriers=${[{ name: 'P-031', rows: 2, columns: 6, take: [{ row: 1, column: 3, text: '3' }, { row: 2, column: 2, text: '8' }, { row: 2, column: 5, text: '11' }] }]} .words=${{ caption: 'Sample 3 barrels of 12', place: 'Batch', row: 'row', column: 'barrel', take: 'take from this barrel' }} .list=${['barrel 3', 'barrel 8', 'barrel 11']}></gh-tray-map>
    <gh-tray-map shape="charge" .carriers=${[{ name: 'S-118', rows: 4, columns: 3, take: [{ row: 1, column: 1, text: 'T1' }, { row: 2, column: 2, text: 'T2' }, { row: 4, column: 3, text: 'T3' }] }]} .words=${{ caption: 'Test pieces of the charge', place: 'Charge', row: 'level', column: 'boat', take: 'test piece' }} .list=${['T1: level 1, boat 1', 'T2: level 2, boat 2', 'T3: level 4, boat 3']}></gh-tray-map></div>`],
  ['gh-progress', html`<div class="pile"><gh-progress label="Pieces looked at" value="48" max="125" text="48 of 125"></gh-progress><gh-progress label="Boxes packed" value="0" max="12" text="0 of 12"></gh-progress></div>`],
];
