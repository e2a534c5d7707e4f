import picturesUrl from '../../demo-data/pictures.json?url';
import journalUrl from '../../demo-data/tern-quay.jsonl?url';

async function get(url: string): Promise<Response> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`the demo studio answered ${answer.status}`);
  return answer;
}

/** As `text()` does, but a piece at a time: a megabyte at once holds the page up. */
async function textOf({ body }: Response): Promise<string> {
  const decoder = new TextDecoder();
  const reader = body?.getReader();
  let text = '';
  for (;;) {
    const piece = await reader?.read();
    if (!piece?.value) return text + decoder.decode();
    text += decoder.decode(piece.value, { stream: true });
  }
}

/** The demo studio's files, which the built app carries along. */
export async function demoFiles(): Promise<{ journal: string; pictures: unknown }> {
  const [journal, pictures] = await Promise.all([get(journalUrl), get(picturesUrl)]);
  return { journal: await textOf(journal), pictures: (await pictures.json()) as unknown };
}
