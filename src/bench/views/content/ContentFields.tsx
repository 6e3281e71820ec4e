/** The fields of a form of the content, in their order: groups with a frame of their own, lists row by row. */
import { besides, type FormNode, type GroupNode, type RowsNode } from '../../intake/contentForm/formTree.ts';
import type { FormFace } from '../../models/content/formFace.ts';
import { ContentField, ContentValues, Notes } from './ContentField.tsx';

type Props = { readonly nodes: readonly FormNode[]; readonly face: FormFace };

/** Plain fields side by side, whatever has a frame below them. */
export function ContentFields({ nodes, face }: Props) {
  const there = nodes.filter(face.offered);
  const plain = there.filter(({ node }) => node === 'value');
  const framed = there.filter(({ node }) => node !== 'value');
  return (
    <>
      {plain.length > 0 && (
        <div class="fields">
          {plain.map((node) => (
            <One node={node} face={face} />
          ))}
        </div>
      )}
      {framed.map((node) => (
        <One node={node} face={face} />
      ))}
    </>
  );
}

function One({ node, face }: { readonly node: FormNode; readonly face: FormFace }) {
  if (node.node === 'value') return <ContentField node={node} face={face} />;
  if (node.node === 'values') return <ContentValues node={node} face={face} />;
  if (node.node === 'group') return <Group group={node} face={face} />;
  return <Rows list={node} face={face} />;
}

function Group({ group, face }: { readonly group: GroupNode; readonly face: FormFace }) {
  return (
    <fieldset id={`f-${group.key}`}>
      <legend>{face.label(group)}</legend>
      <Notes of={group.key} face={face} hint={face.hint(group)} />
      <ContentFields nodes={group.nodes} face={face} />
    </fieldset>
  );
}

function Rows({ list, face }: { readonly list: RowsNode; readonly face: FormFace }) {
  const { words } = face;
  const label = face.label(list);
  return (
    <fieldset id={`f-${list.key}`}>
      <legend>{label}</legend>
      <Notes of={list.key} face={face} hint={face.hint(list)} />
      <input type="hidden" name={besides.rows(list.key)} value={list.rows.length} />
      {list.rows.map(({ key, gone, group }, place) => (
        <fieldset class="one-row" id={`f-${key}`}>
          <legend>{words.row(label, place + 1)}</legend>
          <Notes of={key} face={face} hint={null} />
          <ContentFields nodes={group.nodes} face={face} />
          <label>
            <input type="checkbox" name={besides.gone(key)} checked={gone} /> {words.takeAway}
          </label>
        </fieldset>
      ))}
      <button type="submit" name="do" value={besides.add(list.key)}>
        {words.addRow}
      </button>
    </fieldset>
  );
}
