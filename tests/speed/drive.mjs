// A process of its own for the load, so that making it does not slow what is measured. Takes its orders as JSON on the message channel; says
// `mark` where the counting begins and ends, and the figures last.
import { drive } from './load.mjs';

process.on('message', async ({ subjects, works, from, ...order }) => {
  const mark = async () => process.send({ mark: true, cpu: process.cpuUsage() });
  try {
    const result = await drive({
      ...order, onCounting: mark, onCounted: mark,
      subjectOf: (at) => subjects[at],
      // Reading after reading through the characteristics of the open gate, from the place where the round before left off: each place once.
      commandFor: (at, sent) => {
        const count = from + sent;
        const work = works[Math.floor(count / works[0].n)];
        return work === undefined ? null : { type: 'takeReading', subject: subjects[at], gate: work.gate, characteristic: work.characteristic, ordinal: 1 + (count % work.n), value: work.value };
      },
    });
    process.send(result);
  } catch (error) {
    process.send({ error: String(error) });
  }
});
