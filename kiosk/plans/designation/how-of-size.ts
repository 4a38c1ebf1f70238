import { SHAPES } from '../../../shared/carbide/index.ts';
import type { DesignationEvidence, InsertDesignation, InsertDimensions, InsertSizeLimits, MeasuredWhen } from '../../../shared/carbide/index.ts';
import { designationDeskWords } from '../../../shared/words/designation-desk.en.ts';
import { designationWords } from '../../../shared/words/designation.en.ts';
import { planWhyWords, type SourceTag } from '../../../shared/words/plan-why.en.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import type { Why } from '../compare/why.ts';

const { how } = designationDeskWords;
const { labels } = planWhyWords;
const TAGS: Readonly<Record<DesignationEvidence, SourceTag>> = { seen: 'seen', memory: 'memory', memoryAgrees: 'memory', memoryUncertain: 'memory', derived: 'derived', derivedChecked: 'derived', givenByPlant: 'plant' };

/** How the control dimension came to be; null where there is none. */
export function howOfControlDimension({ shape }: InsertDesignation, { controlDimension, inscribedCircle, cornerRadius }: InsertDimensions): Why | null {
  if (controlDimension === null || inscribedCircle === null || cornerRadius === null) return null;
  const { rule, factor, mm, evidence } = controlDimension;
  const put = how.inputs(showFigure(inscribedCircle.exactMm), showFigure(cornerRadius.usedMm), showFigure(SHAPES[shape].includedAngleDeg ?? 0), showNumber(factor, 6), showNumber(mm, 4));
  const { inch, nominalMm, usedMm } = cornerRadius;
  return {
    lines: [
      { label: labels.rule, text: how[rule] }, { label: labels.formula, text: how.formula[rule], formula: true }, { label: labels.inputs, text: put, formula: true },
      ...(inch === null ? [] : [{ label: labels.rule, text: how.inchRadius(showFigure(nominalMm), inch, showFigure(usedMm)) }]), ...(shape === 'W' ? [{ label: labels.rule, text: how.trigon }] : []), { label: labels.rule, text: how.drawingFirst },
    ],
    excerpt: null,
    sources: [{ text: how.definition, tag: 'memory' }, { text: how.geometry, tag: 'derived' }, ...(evidence === 'derivedChecked' ? [{ text: how.printed, tag: 'seen' as const }] : [])],
  };
}

/** How the limits of d, m or s came to be; null where there are none. */
export function howOfLimits({ shape, toleranceClass, tables }: InsertDesignation, { inscribedCircle }: InsertDimensions, limits: InsertSizeLimits, measured: MeasuredWhen): Why | null {
  const { size, targetMm, tolerance, lowerMm, upperMm } = limits;
  if (targetMm === null || tolerance.kind !== 'limit' || lowerMm === null || upperMm === null) return null;
  const plusMinus = showFigure(tolerance.plusMinusMm);
  const isGiven = tolerance.evidence === 'givenByPlant';
  const said = tolerance.bySize ? how.bySize(toleranceClass, size, shape, inscribedCircle === null ? '' : showFigure(inscribedCircle.nominalMm), plusMinus) : how.class(toleranceClass, size, plusMinus);
  const isCoated = measured.when === 'afterCoating' && size !== 'm';
  const table = how.table(designationWords.edition(tables.standard, tables.edition));
  return {
    lines: [
      { label: labels.rule, text: isGiven ? how.given : said }, ...(size === 'm' ? [] : [{ label: labels.rule, text: how.nominal }]), ...(isCoated ? [{ label: labels.rule, text: how.coated(showFigure(measured.coatingUm)) }] : []),
      { label: labels.formula, text: how.limits, formula: true }, { label: labels.inputs, text: how.put(showNumber(targetMm, 3), plusMinus, showNumber(lowerMm, 3), showNumber(upperMm, 3)), formula: true },
    ],
    excerpt: null,
    sources: [
      { text: isGiven ? how.given : tolerance.evidence === 'memoryAgrees' ? `${table}; ${how.memoryAgrees}` : table, tag: TAGS[tolerance.evidence] }, ...(isCoated ? [{ text: how.practice, tag: 'practice' as const }] : []),
    ],
  };
}
