/** What a plan on paper says besides its rules and limits. */
export const planSheetWords = {
  title: (plan: string, version: string) => `Inspection plan ${plan}, version ${version}`,
  heading: 'Inspection plan', version: (version: string) => `Version ${version}`,
  standings: { inForce: 'IN FORCE', draft: 'DRAFT, NOT IN FORCE', former: 'FORMER VERSION, NOT IN FORCE' },
  appliesTo: (kind: string) => `For each ${kind}.`, drafted: (by: string, at: string, why: string) => `Drafted by ${by}, ${at}: ${why}`,
  lotSize: (pieces: string) => `Samples are stated for a lot of ${pieces}; another lot size may ask for others.`, printed: (at: string) => `Printed ${at}. Whether this version is in force now, the plant’s records say.`,
  gate: (at: string, name: string) => `${at}. ${name}`, gateAt: (bench: string, roles: string) => `At ${bench}; worked by ${roles}.`, elsewhere: (kind: string) => `Worked on the ${kind}. Its characteristics stand in the plan of the ${kind}, and its verdict stands here.`,
  columns: { class: 'Class', severity: 'Inspection', letter: 'Letter', n: 'Pieces', samples: 'Samples', rest: 'Judged by', note: 'Notes' }, again: 'goes on', used: 'pieces are used up', each: 'as the rule says',
  notes: 'Notes', note: (number: string, text: string) => `${number}  ${text}.`, approvals: 'Signatures', approvalColumns: { meaning: 'Meaning', who: 'Who', at: 'When' }, noApproval: 'Nobody has signed this version yet. Two engineers must, before it is in force.', oneApproval: 'A second engineer must sign before it is in force.',
  plannedBy: 'Plan approved by', demo: 'INVENTED DEMO DATA', page: (page: number, of: number) => `Page ${page} of ${of}`,
};
export type PlanSheetWords = typeof planSheetWords;
