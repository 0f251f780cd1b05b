import { SectionMark } from "../parts/section-mark.tsx";
import type { Voicing } from "../../voicing/index.ts";

/** Pitches the small ladders reach from and to, MIDI; all of them share one scale. */
const scale = { top: 84, bottom: 38 };
const size = { width: 48, height: 96 };
const columns = { trumpets: 9, trombones: 24, saxes: 39, rhythm: 24 } as const;

function yOf(pitch: number): number {
  const share = (scale.top - pitch) / (scale.top - scale.bottom);
  return 6 + (size.height - 12) * Math.min(1, Math.max(0, share));
}

/** A kept voicing at a glance: notes as threads, sections as marks. */
export function SmallLadder({ voicing }: { readonly voicing: Voicing }) {
  const marks = new Map(
    voicing.placements.map(({ player, sounding }) => [
      `${player.section} ${sounding}`,
      { section: player.section, pitch: sounding },
    ]),
  );
  const pitches = [...new Set(voicing.placements.map((one) => one.sounding))];
  return (
    <svg {...size} viewBox={`0 0 ${size.width} ${size.height}`} aria-hidden="true">
      {pitches.map((pitch) => (
        <line key={pitch} className="small-rung" x1="2" x2="46" y1={yOf(pitch)} y2={yOf(pitch)} />
      ))}
      {[...marks].map(([key, { section, pitch }]) => (
        <SectionMark key={key} section={section} x={columns[section]} y={yOf(pitch)} r={3.8} />
      ))}
    </svg>
  );
}
