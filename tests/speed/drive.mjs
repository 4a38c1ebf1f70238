// A process of its own for the load, so that making it does not slow what is measured. Takes its orders as JSON on the message channel.
import { drive } from './load.mjs';

process.on('message', async ({ url, tokens, kiosks, seconds, perSecond, inFlight, subjects, works }) => {
  try {
    const result = await drive({
      url, tokens, kiosks, seconds, perSecond, inFlight,
      subjectOf: (at) => subjects[at],
      // Reading after reading through the characteristics of the open gate: each place once.
      commandFor: (at, count) => {
        const work = works[Math.floor(count / works[0].n)];
        return work === undefined ? null : { type: 'takeReading', subject: subjects[at], gate: work.gate, characteristic: work.characteristic, ordinal: 1 + (count % work.n), value: work.value };
      },
    });
    process.send(result);
  } catch (error) {
    process.send({ error: String(error) });
  }
});
