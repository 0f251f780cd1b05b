import type { PitchScale } from "../../parts/still-ladder-plan.ts";
import { StillLadder } from "../../parts/still-ladder.tsx";
import { namerOf } from "../../words/pitch-names.ts";
import type { ReportedKept } from "../reported-kept.ts";
import { playerMoves } from "../../parts/player-moves.ts";

/** A kept voicing's ladder, with those framed who sit elsewhere in the one compared with. */
export function CompareLadder(props: {
  readonly one: ReportedKept;
  readonly base: ReportedKept;
  readonly scale: PitchScale;
  readonly width: number;
}) {
  const { one, base, scale, width } = props;
  const { kept, report, question } = one;
  const moves = playerMoves(report.voicing, base.report.voicing);
  return (
    <StillLadder
      name={kept.letter}
      voicing={report.voicing}
      players={question.players}
      nameOf={namerOf(question.chord)}
      lead={question.lead}
      scale={scale}
      width={width}
      framed={new Set(moves.map(({ player }) => player.id))}
    />
  );
}
