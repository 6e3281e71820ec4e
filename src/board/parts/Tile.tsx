/** One component of the trays: its picture, name, size and what is left. */
import { useMemo, useRef, useState } from 'preact/hooks';
import { drawPart } from '#draw/drawings/part.ts';
import type { BoardInput } from '../model/input.ts';
import type { PanelRow } from '../model/panel.ts';
import type { Talk } from '../model/talk.ts';

type Props = {
  readonly row: PanelRow;
  readonly input: BoardInput;
  readonly talk: Talk;
  readonly isActive: boolean;
  readonly onPut: () => void;
  readonly onDrop: (x: number, y: number) => void;
};

/** A tap that slips this far is still a tap, px. */
const SLIP_PX = 10;

export function Tile({ row, input, talk, isActive, onPut, onDrop }: Props) {
  const { words, f } = talk;
  const { component, name, left, tray } = row;
  const picture = useMemo(
    () => drawPart(input.design, component, { title: name, description: '', idPrefix: `t-${component.id}` }),
    [input, component, name],
  );
  const start = useRef<readonly [number, number] | null>(null);
  const [moved, setMoved] = useState<readonly [number, number] | null>(null);

  const move = ({ clientX, clientY }: PointerEvent): void => {
    if (start.current === null) return;
    const by = [clientX - start.current[0], clientY - start.current[1]] as const;
    if (moved !== null || Math.hypot(...by) > SLIP_PX) setMoved(by);
  };
  const end = ({ clientX, clientY }: PointerEvent): void => {
    const wasDragged = moved !== null;
    const wasDown = start.current !== null;
    start.current = null;
    setMoved(null);
    if (!wasDown) return;
    if (wasDragged) onDrop(clientX, clientY);
    else onPut();
  };
  const cancel = (): void => {
    start.current = null;
    setMoved(null);
  };
  const size =
    component.alongMm === component.acrossMm ? [component.alongMm] : [component.alongMm, component.acrossMm];
  const facts = [
    `${size.map((mm) => f.number(mm, 1)).join(' × ')} mm`,
    tray === '' ? '' : words.trays.tray(tray),
    left === null ? '' : words.trays.left(left, f),
  ].filter((fact) => fact !== '');
  return (
    <div
      id={`tile-${component.id}`}
      class={isActive ? 'tile active' : 'tile'}
      role="option"
      aria-selected={isActive}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        start.current = [event.clientX, event.clientY];
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={move}
      onPointerUp={end}
      onPointerCancel={cancel}
    >
      <span
        class={moved === null ? 'pic' : 'pic dragged'}
        style={moved === null ? undefined : { transform: `translate(${moved[0]}px, ${moved[1]}px)` }}
        aria-hidden="true"
        dangerouslySetInnerHTML={{ __html: picture }}
      />
      <span class="name">
        {name}
        <small class={left !== null && left < 0 ? 'short' : undefined}>{facts.join(' · ')}</small>
      </span>
    </div>
  );
}
