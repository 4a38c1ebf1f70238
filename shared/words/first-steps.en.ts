/** What a new plant does until its first plan is in force. */
export const firstStepsWords = {
  title: 'First steps of a new plant', lead: 'No plan is in force yet, so no powder batch and no lot can be opened.',
  done: 'done', next: 'next', later: 'then',
  steps: {
    people: 'The keeper enrols the people, two quality engineers among them, at the keeper’s desk.',
    records: 'A quality engineer loads plans, grades, coatings, products and gauges from a file, at Plans, Catalogue.',
    approval: 'Two quality engineers approve each plan, at Plans.',
    batch: 'The lab opens the first powder batch, at the lab’s desk.',
  },
};
export type FirstStepsWords = typeof firstStepsWords;
