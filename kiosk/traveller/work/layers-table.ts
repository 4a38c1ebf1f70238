import { html, nothing } from 'lit';
import type { GateRecord, Measured } from '../../../shared/traveller/index.ts';
import { labels } from '../../desk/words.ts';
import { format, travellerWords } from '../speak.ts';
import { layersOf } from './input-names.ts';
import { standingOf } from './strip-of.ts';

/** What the craters read so far give for each layer, beside its limits; nothing where the coating is judged as a whole. */
export function layersTable(gate: GateRecord, lead: Measured, pieces: number): unknown {
  const layers = layersOf(gate, lead);
  if (layers.length === 0) return nothing;
  const words = travellerWords().measure;
  const { layersTable: table } = words.input;
  const ordinals = Array.from({ length: pieces }, (_, at) => at + 1);
  return html`<table class="layers"><caption>${table.caption}</caption>
    <thead><tr><th scope="col">${table.layer}</th><th scope="col">${table.limits}</th>${ordinals.map((ordinal) => html`<th scope="col">${table.piece(ordinal)}</th>`)}</tr></thead>
    <tbody>${layers.map((layer) => {
      const readings = gate.work.find(({ demand }) => demand.characteristic.id === layer.id)?.readings ?? [];
      const written = (limit: number | null) => (limit === null ? null : format().number(limit, layer.decimals));
      return html`<tr><th scope="row">${layer.name}</th><td>${labels.between(written(layer.lower), written(layer.upper))}</td>${ordinals.map((ordinal) => {
        const value = readings.find((reading) => reading.ordinal === ordinal)?.value;
        if (typeof value !== 'number') return html`<td>${table.none}</td>`;
        const standing = standingOf(value, layer, 0);
        return html`<td class=${standing}>${format().number(value, layer.decimals)}${standing === 'in' ? nothing : html` <small>${words.standings[standing]}</small>`}</td>`;
      })}</tr>`;
    })}</tbody></table>`;
}
