import picturesUrl from '../../demo-data/pictures.json?url';
import journalUrl from '../../demo-data/tern-quay.jsonl?url';

async function get(url: string): Promise<Response> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`the demo studio answered ${answer.status}`);
  return answer;
}

/** The demo studio's files, which the built app carries along. */
export async function demoFiles(): Promise<{ journal: string; pictures: unknown }> {
  const [journal, pictures] = await Promise.all([get(journalUrl), get(picturesUrl)]);
  return { journal: await journal.text(), pictures: (await pictures.json()) as unknown };
}
