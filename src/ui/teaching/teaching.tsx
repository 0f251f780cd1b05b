import { useEffect, type KeyboardEvent } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import type { Idea } from "../../explore/index.ts";
import { stopSound, warmSound } from "../actions/hear.ts";
import { LiveRegion } from "../parts/live-region.tsx";
import type { Asked } from "../state/page-state.ts";
import { chordWithSigns, withSigns } from "../words/signs.ts";
import { LessonView } from "./lesson-view.tsx";
import { ideaWords } from "./lesson-words.ts";
import { leaveTeaching, prepareTeaching } from "./prepare-teaching.ts";
import { QuizView } from "./quiz-view.tsx";
import { goToTopic } from "./teaching-moves.ts";
import { teaching, useTeaching, type Topic } from "./teaching-store.ts";
import { useIsRoom } from "./use-room.ts";
import "./teaching.css";
import "./quiz.css";

/** Lessons and quiz, over the whole page. */
export function Teaching({ onClose }: { readonly onClose: () => void }) {
  const isRoom = useIsRoom();
  useEffect(() => {
    prepareTeaching();
    warmSound();
    return () => {
      leaveTeaching();
      stopSound();
    };
  }, []);
  return (
    <ModalOverlay
      className="teach-ground"
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <Modal className="teach-modal">
        <Dialog className={isRoom ? "teach teach-room" : "teach"}>
          <div className="teach-inner" onKeyDown={keepSteps}>
            <TeachingHead onClose={onClose} />
            <TopicView />
            <LiveRegion />
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** Undo belongs to the page behind: nothing here is a step of it. */
function keepSteps(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey) event.stopPropagation();
}

function TopicView() {
  const topic = useTeaching((state) => state.topic);
  const asked = useTeaching((state) => state.asked);
  if (asked === null)
    return (
      <p className="teach-empty">
        Lessons are about the question in view. Close this, ask with a chord and a melody note, and
        come back.
      </p>
    );
  if (topic === "quiz") return <QuizView asked={asked} />;
  return <LessonView key={topic} idea={topic} asked={asked} />;
}

function TeachingHead({ onClose }: { readonly onClose: () => void }) {
  const topic = useTeaching((state) => state.topic);
  const asked = useTeaching((state) => state.asked);
  return (
    <header className="teach-head">
      <Heading slot="title" level={1} className="loud">
        {topic === "quiz" ? "Quiz" : ideaWords[topic].title}
      </Heading>
      <p className="teach-sentence">
        {topic === "quiz" ? "Two voicings. Listen, then say which." : ideaWords[topic].sentence}
        {asked !== null && <AskedText asked={asked} />}
      </p>
      <TopicNav topic={topic} onClose={onClose} />
    </header>
  );
}

/** The question the lesson is about. */
function AskedText({ asked }: { readonly asked: Asked }) {
  const { chord, lead, dynamic } = asked.question;
  const name = withSigns(asked.nameOf(lead).name);
  return (
    <span className="teach-asked">
      {chordWithSigns(chord.display)} under {name}, <span className="dynamic-sign">{dynamic}</span>
    </span>
  );
}

const ideas: readonly Idea[] = ["span", "weight", "density", "interleaving"];

/** The steps of the lesson, the quiz, the size of the type, the way out. */
function TopicNav({ topic, onClose }: { readonly topic: Topic; readonly onClose: () => void }) {
  const isRoom = useTeaching((state) => state.isRoom);
  return (
    <nav className="teach-nav" aria-label="Lesson">
      {[...ideas, "quiz" as const].map((each) => (
        <button
          key={each}
          type="button"
          className="teach-tab"
          {...(each === topic ? { "aria-current": "step" as const } : {})}
          onClick={() => goToTopic(each)}
        >
          {each === "quiz" ? "Quiz" : ideaWords[each].title}
        </button>
      ))}
      <button
        type="button"
        className="teach-tab teach-type"
        aria-pressed={isRoom}
        title="One idea in large type, to be read from the back of a room"
        onClick={() => teaching.setState({ isRoom: !isRoom })}
      >
        Large type
      </button>
      <Button className="teach-tab" onPress={onClose}>
        Close
      </Button>
    </nav>
  );
}
