import { render } from 'preact';
import { print } from '../../actions/take-list.ts';
import type { ListOut } from '../../views/list-out.ts';
import '../styles/paper.css';

/** Puts a list on paper alone, with its title, and what it is of and when on every copy. False where the browser cannot print. */
export async function printList(list: ListOut, about: string): Promise<boolean> {
  const root = document.documentElement;
  const paper = document.createElement('div');
  paper.className = 'paper';
  document.body.append(paper);
  render(<Paper list={list} about={about} />, paper);
  root.dataset['printing'] = 'list';
  // What a browser prints in its own margin, and what a printed file is called.
  const before = document.title;
  document.title = list.title;
  try {
    return await print();
  } finally {
    document.title = before;
    delete root.dataset['printing'];
    render(null, paper);
    paper.remove();
  }
}

function Paper({ list, about }: { list: ListOut; about: string }) {
  // A column that says nothing in any row only takes the others' room.
  const columns = list.headings.flatMap((_, i) => (list.rows.some((row) => row[i]) ? [i] : []));
  return (
    <>
      <h1>{list.title}</h1>
      <p>{about}</p>
      <table>
        <thead>
          <tr>
            {columns.map((i) => (
              <th key={i} scope="col">
                {list.headings[i]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {list.rows.map((row) => (
            <tr key={row.join('\t')}>
              {columns.map((i) => (
                <td key={i}>{row[i]}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {list.rows.length === 0 && <p>Nothing is on this list.</p>}
    </>
  );
}
