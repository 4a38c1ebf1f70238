import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { CLEARANCES, formatDesignation, LENGTH_DECIMALS, LIMITED_SIZES } from '../../../shared/carbide/index.ts';
import type { LimitedSize } from '../../../shared/carbide/index.ts';
import { designationDeskWords } from '../../../shared/words/designation-desk.en.ts';
import { designationWords } from '../../../shared/words/designation.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import { SortedTable, type DeskRow } from '../../desk/sorted-table.ts';
import { partStyles } from '../../parts/part-styles.ts';
import '../compare/gh-why-sheet.ts';
import './gh-how-key.ts';
import { howOfControlDimension, howOfLimits } from './how-of-size.ts';
import type { WorkedDesignation } from './limit-texts.ts';

const words = designationDeskWords.dimensions;
const columns = [
  { key: 'size', head: words.columns.size }, { key: 'target', head: words.columns.target, unit: words.unit, kind: 'number' as const }, { key: 'plusMinus', head: words.columns.plusMinus, unit: words.unit, kind: 'number' as const },
  { key: 'lower', head: words.columns.lower, unit: words.unit, kind: 'number' as const }, { key: 'upper', head: words.columns.upper, unit: words.unit, kind: 'number' as const }, { key: 'source', head: words.columns.source },
];
interface Asked { readonly asked: string; readonly name: string; readonly shown: string }

/** Dimensions and limits of a designation as a table, each worked-out figure with how it came to be. */
@customElement('gh-designation-sizes')
export class GhDesignationSizes extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: block; --target: 32px; }`];
  @property({ attribute: false }) worked: WorkedDesignation | null = null;
  @state() private asked: Asked | null = null;
  readonly #table = new SortedTable(this);

  override render() {
    const { worked, asked } = this;
    if (worked === null) return nothing;
    return html`<div @how-wanted=${({ detail }: CustomEvent<Asked>) => (this.asked = detail)}>${this.#table.table(words.caption, columns, this.#rows(worked), { empty: '', file: `dimensions-${formatDesignation(worked.designation)}` })}</div>
      <gh-why-sheet .why=${asked === null ? null : this.#how(worked, asked.asked)} heading=${asked === null ? '' : designationDeskWords.how.heading(asked.name)} shown=${asked?.shown ?? ''} @sheet-closed=${() => (this.asked = null)}></gh-why-sheet>`;
  }

  #how({ designation, dimensions, limits, measured }: WorkedDesignation, asked: string) {
    if (asked === 'target') return howOfControlDimension(designation, dimensions);
    const size = LIMITED_SIZES.find((each) => each === asked);
    return size === undefined ? null : howOfLimits(designation, dimensions, limits[size], measured);
  }

  #rows(worked: WorkedDesignation): readonly DeskRow[] {
    const { edgeLengthMm, cornerRadius, includedAngleDeg, longSideWholeMm } = worked.dimensions;
    const { otherSizes, evidence } = designationWords;
    const clearance = CLEARANCES[worked.designation.clearance];
    const plain = (key: string, size: string, target: string, source: string): DeskRow => ({ key, texts: { size, target, plusMinus: words.none, lower: words.none, upper: words.none, source } });
    return [
      ...LIMITED_SIZES.map((size) => this.#limited(worked, size)),
      ...(edgeLengthMm === null ? [] : [plain('l', otherSizes.l, showNumber(edgeLengthMm, 1), evidence.derived)]), ...(longSideWholeMm === null ? [] : [plain('long', otherSizes.long, showFigure(longSideWholeMm), evidence.memory)]),
      ...(worked.designation.corner.kind === 'wiper' ? [plain('r', otherSizes.r, words.wiper, evidence.memory)] : cornerRadius === null ? [] : [plain('r', otherSizes.r, showFigure(cornerRadius.nominalMm), evidence.memory)]),
      ...(includedAngleDeg === null ? [] : [plain('angle', otherSizes.angle, `${showFigure(includedAngleDeg)}°`, evidence.memory)]), plain('clearance', otherSizes.clearance, clearance === null ? words.asDrawn : `${showFigure(clearance)}°`, evidence.memory),
    ];
  }

  #limited({ dimensions, limits }: WorkedDesignation, size: LimitedSize): DeskRow {
    const { targetMm, tolerance, lowerMm, upperMm } = limits[size];
    const name = designationWords.sizes[size];
    const mm = (value: number | null): string => (value === null ? words.none : showNumber(value, LENGTH_DECIMALS));
    const plusMinus = tolerance.kind === 'limit' ? showFigure(tolerance.plusMinusMm) : words.none;
    const absent = targetMm === null ? this.#absent(dimensions, size) : '';
    const source = absent !== '' ? absent : tolerance.kind === 'limit' ? designationWords.evidence[tolerance.evidence] : tolerance.kind === 'notInHand' ? designationWords.notInHand[tolerance.why] : '';
    const how = (asked: string, column: string, shown: string) => html`<gh-how-key asked=${asked} name="${name}, ${column}" shown=${shown}></gh-how-key>`;
    const hasLimits = lowerMm !== null && upperMm !== null;
    return {
      key: size, texts: { size: name, target: mm(targetMm), plusMinus, lower: mm(lowerMm), upper: mm(upperMm), source },
      shown: {
        ...(size === 'm' && dimensions.controlDimension !== null ? { target: how('target', words.columns.target, mm(targetMm)) } : {}),
        ...(hasLimits ? { lower: how(size, words.columns.lower, mm(lowerMm)), upper: how(size, words.columns.upper, mm(upperMm)) } : {}),
      },
    };
  }

  #absent({ noControlDimension, circleUnknown }: WorkedDesignation['dimensions'], size: LimitedSize): string {
    if (size === 'm' && noControlDimension !== null) return words.noM[noControlDimension];
    return circleUnknown === 'severalFit' ? words.several : words.notInCode;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-designation-sizes': GhDesignationSizes;
  }
}
