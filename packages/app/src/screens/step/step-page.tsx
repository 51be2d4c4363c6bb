import type { Step } from "@jetwright/core";
import { Link } from "wouter-preact";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/bike.css";
import { BikeBar, bikeAddress } from "../bike/bike-bar.tsx";
import { MarkRight } from "../right/mark-right.tsx";
import { adviceBody, isWritten } from "./advice-record.ts";
import { OtherWays } from "./other-ways.tsx";
import { SomethingElse } from "./something-else.tsx";
import { stepAddress } from "./step-address.ts";
import { StepCard } from "./step-card.tsx";

interface StepPageProps {
  readonly params: { readonly bike: string; readonly index?: string };
}

/** The next step in full, and the other ways; with an index, one of those in full. */
export function StepPage({ params }: StepPageProps) {
  const { bike } = params;
  const {
    step: words,
    bike: { sheet },
  } = useWords();
  const shop = useShop();
  const view = useAnswer("bike", { bike });
  const advice = useAnswer("advice", { bike });
  const standing = useAnswer("standing", { bike });
  const back = { to: bikeAddress(bike), words: view?.name ?? bike };
  const bar = <BikeBar bike={bike} here="next" />;
  const refused = [advice, standing].find((answer) => answer !== null && !answer.ok);
  if (!advice?.ok || !standing?.ok) {
    return (
      <Screen title={words.title} back={back} bar={bar}>
        <p class={refused ? undefined : "quiet"}>{refused && !refused.ok ? refused.detail : "…"}</p>
      </Screen>
    );
  }
  const ways: readonly Step[] = [advice.value.step, ...advice.value.others];
  const asked = Number(params.index ?? 0);
  const shown = ways[asked] === undefined ? 0 : asked;
  const step = ways[shown]!;

  async function note(followed: boolean): Promise<void> {
    if (!advice?.ok || !standing?.ok || isWritten(step, followed, standing.value)) return;
    const body = adviceBody(step, advice.value, standing.value, followed);
    const kept = await shop.keep({ kind: "advice-given", bike, body });
    if (!kept.ok) say(kept.detail);
  }

  return (
    <Screen
      title={step.kind === "stop" ? words.stopTitle : shown === 0 ? words.title : words.otherTitle}
      back={back}
      bar={bar}
      wide
    >
      <StepCard
        bike={bike}
        step={step}
        standing={standing.value}
        to={stepAddress(bike, step, shown, standing.value.checkOf)}
        onFollow={() => void note(true)}
      >
        {step.id === "confirm" &&
          (standing.value.rightAt === null ? (
            <MarkRight bike={bike} airNoted={standing.value.air.noted} />
          ) : (
            <Link class="button" href={bikeAddress(bike, "sheet")}>
              {sheet}
            </Link>
          ))}
        <OtherWays bike={bike} ways={ways} shown={shown} waiting={advice.value.waiting} />
        <SomethingElse bike={bike} onDecline={() => note(false)} />
      </StepCard>
    </Screen>
  );
}
