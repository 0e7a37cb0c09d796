// What the types are for: calling the service with plain fetch, checked by the compiler.
import type { Operations, PiecesAnswer, ProblemBody } from "./longpoint";

type Computed = { [Id in keyof Operations]: Operations[Id] extends { request: unknown; response: unknown } ? Id : never }[keyof Operations];

async function compute<Id extends Computed>(
  base: string,
  path: Operations[Id]["path"],
  request: Operations[Id] extends { request: infer Request } ? Request : never,
): Promise<Operations[Id] extends { response: infer Response } ? Response : never> {
  const answer = await fetch(base + path, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(request),
  });
  if (!answer.ok) {
    const problem: ProblemBody = await answer.json();
    throw new Error(problem.errors.map((fault) => `${fault.pointer ?? ""} ${fault.detail}`).join("\n"));
  }
  return answer.json();
}

export async function stoolLength(base: string): Promise<string> {
  const pieces: PiecesAnswer = await compute<"compute_stool">(base, "/v1/stool", {
    jamb_width: "30 5/8 in",
    jamb_depth: "3 1/8 in",
    reveal: "3/16 in",
    casing_width: "2 1/2 in",
    horn: "3/4 in",
    nosing: "7/8 in",
    apron_thickness: "5/8 in",
  });
  const stool = pieces.pieces[0];
  const exact: string | null | undefined = stool?.overall.exact;
  return `${stool?.overall.text} (exactly ${exact ?? "irrational"})`;
}

export function refused(): Operations["compute_stool"]["request"] {
  // @ts-expect-error - a length is text with its unit, never a bare number
  return { jamb_width: 30.625, reveal: "3/16 in", casing_width: "2 1/2 in", horn: "3/4 in", nosing: "7/8 in", apron_thickness: "5/8 in" };
}
