import type { CertificateData } from '../../shared/wire/certificate-data.ts';
import { certificateWords } from '../../shared/words/certificate.en.ts';
import { certificatePdf } from '../documents/certificate/index.ts';
import { holdTagPdf, type HoldTagData } from '../documents/hold-tag/index.ts';
import { boxLabelPdf, type BoxLabelData, type LabelChoice } from '../documents/label/index.ts';
import { planSheetPdf, type PlanSheetData } from '../documents/plan-sheet/index.ts';
import { studySheetPdf, type StudySheetData } from '../documents/study-sheet/index.ts';
import type { PrintedCharge } from '../documents/traveller-sheet/draw-charge.ts';
import { travellerSheetPdf, type PrintedSlip, type TravellerSheetAbout } from '../documents/traveller-sheet/index.ts';

/** One PDF to be made, as plain data that can go to another thread. */
export type PaintTask =
  | { readonly what: 'certificate'; readonly data: CertificateData; readonly drawing: boolean }
  | { readonly what: 'holdTag'; readonly data: HoldTagData }
  | { readonly what: 'label'; readonly data: BoxLabelData; readonly choice: Pick<LabelChoice, 'size' | 'dpi'> }
  | { readonly what: 'plan'; readonly data: PlanSheetData }
  | { readonly what: 'study'; readonly data: StudySheetData }
  | { readonly what: 'traveller'; readonly slips: readonly PrintedSlip[]; readonly about: TravellerSheetAbout; readonly charge: PrintedCharge | null };

/** Paints one. Never throws at once: what cannot be painted rejects. */
export async function paintTask(task: PaintTask): Promise<Buffer> {
  switch (task.what) {
    case 'certificate': return certificatePdf(task.data, certificateWords, { drawing: task.drawing });
    case 'holdTag': return holdTagPdf(task.data);
    case 'label': return boxLabelPdf(task.data, task.choice);
    case 'plan': return planSheetPdf(task.data);
    case 'study': return studySheetPdf(task.data);
    case 'traveller': return travellerSheetPdf(task.slips, task.about, task.charge);
  }
}
