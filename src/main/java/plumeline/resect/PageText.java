package plumeline.resect;

/// The page's style sheet and its script.
final class PageText {
    static final String STYLE = """
            :root { --ink: #111; --paper: #fff; --faint: #666; }
            @media (prefers-color-scheme: dark) { :root { --ink: #eee; --paper: #111; --faint: #aaa; } }
            body { background: var(--paper); color: var(--ink); max-width: 110rem; margin: 0 auto; padding: 1rem;
              font: 1rem/1.45 "DejaVu Sans Condensed", "Helvetica Neue", Arial, sans-serif; }
            h1 { font-size: 1.5rem; margin: 0 0 .2rem; } h2 { font-size: 1.15rem; margin: 1.4rem 0 .3rem; }
            p { margin: .3rem 0; max-width: 60rem; }
            .pair { display: grid; grid-template-columns: 1fr 1fr; gap: 1rem; margin-top: 1rem; }
            @media (max-width: 50rem) { .pair { grid-template-columns: 1fr; } }
            figure { margin: 0; } figcaption { margin-top: .25rem; }
            .sheet { position: relative; border: 1px solid var(--ink); line-height: 0; }
            .sheet img { width: 100%; height: auto; display: block; }
            .sheet svg { position: absolute; inset: 0; width: 100%; height: 100%; }
            #picture { cursor: pointer; } #said { font-weight: bold; min-height: 1.5em; }
            .side { position: sticky; top: 1rem; }
            #still { cursor: crosshair; touch-action: manipulation; }
            #still:focus, input:focus-visible, button:focus-visible, textarea:focus { outline: 3px solid var(--ink);
              outline-offset: 2px; }
            .under { stroke: #fff; fill: none; } .over { stroke: #000; fill: none; }
            svg text { fill: #000; stroke: #fff; paint-order: stroke; font-family: inherit; font-weight: bold; }
            .planned { stroke-dasharray: 9 6; }
            .bench { display: grid; grid-template-columns: auto 15rem; gap: 2.5rem; justify-content: start;
              margin-top: 1rem; align-items: start; }
            @media (max-width: 50rem) { .bench { grid-template-columns: 1fr; } }
            table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
            th, td { text-align: left; padding: .15rem .9rem .15rem 0; border-bottom: 1px solid var(--faint);
              vertical-align: top; } td.n, th.n { text-align: right; }
            label { display: block; min-height: 1.7rem; }
            canvas { border: 1px solid var(--ink); width: 15rem; height: 15rem; image-rendering: pixelated; }
            textarea { width: 100%; box-sizing: border-box; font: .95rem/1.4 "DejaVu Sans Mono", monospace;
              background: var(--paper); color: var(--ink); border: 1px solid var(--ink); padding: .4rem; }
            button { font: inherit; background: var(--paper); color: var(--ink); border: 1px solid var(--ink);
              padding: .35rem .8rem; margin: .2rem .4rem .2rem 0; }
            .off { font-weight: bold; } .faint { color: var(--faint); }
            """;

    static final String SCRIPT = """
            'use strict';
            const still = document.getElementById('still'), photo = still.querySelector('img');
            const layer = document.getElementById('noted'), hair = document.getElementById('hair');
            const across = Number(still.dataset.across), down = Number(still.dataset.down);
            const places = [...document.querySelectorAll('input[name=place]')];
            const command = document.getElementById('command'), said = document.getElementById('said');
            const lens = document.getElementById('lens').getContext('2d');
            const noted = new Map();
            let at = { x: across / 2, y: down / 2 };
            const chosen = () => places.find(place => place.checked);
            const title = place => place.dataset.number + ' ' + place.value;
            const figure = value => String(Math.round(value * 10) / 10);
            function line(x1, y1, x2, y2, word, wide) {
              const one = document.createElementNS(layer.namespaceURI, 'line');
              for (const [key, value] of Object.entries({ x1, y1, x2, y2, class: word, 'stroke-width': wide })) {
                one.setAttribute(key, value);
              }
              return one;
            }
            function cross(into, x, y, size) {
              for (const [word, wide] of [['under', across / 320], ['over', across / 960]]) {
                into.append(line(x - size, y, x + size, y, word, wide), line(x, y - size, x, y + size, word, wide));
              }
            }
            function look() {
              const part = 60;
              lens.fillStyle = '#fff';
              lens.fillRect(0, 0, 240, 240);
              lens.imageSmoothingEnabled = false;
              const scale = photo.naturalWidth / across;
              lens.drawImage(photo, (at.x - part / 2) * scale, (at.y - part / 2) * scale, part * scale, part * scale,
                0, 0, 240, 240);
              for (const [colour, wide] of [['#fff', 3], ['#000', 1]]) {
                lens.strokeStyle = colour;
                lens.lineWidth = wide;
                lens.beginPath();
                lens.moveTo(120, 60); lens.lineTo(120, 112); lens.moveTo(120, 128); lens.lineTo(120, 180);
                lens.moveTo(60, 120); lens.lineTo(112, 120); lens.moveTo(128, 120); lens.lineTo(180, 120);
                lens.stroke();
              }
              hair.replaceChildren();
              cross(hair, at.x, at.y, across / 60);
            }
            function tell() {
              const points = [...noted].map(([name, p]) => name + '=' + figure(p.x) + ',' + figure(p.y));
              command.value = points.length
                ? still.dataset.command + ' --point ' + points.join(' ') : 'Nothing noted yet.';
              layer.replaceChildren();
              for (const place of places) {
                const p = noted.get(place.value), cell = document.getElementById('at-' + place.dataset.number);
                cell.textContent = p ? figure(p.x) + ', ' + figure(p.y) : '';
                if (p) {
                  cross(layer, p.x, p.y, across / 110);
                  const label = document.createElementNS(layer.namespaceURI, 'text');
                  label.setAttribute('x', p.x + across / 90);
                  label.setAttribute('y', p.y - across / 120);
                  label.setAttribute('font-size', across / 48);
                  label.setAttribute('stroke-width', across / 300);
                  label.textContent = place.dataset.number;
                  layer.append(label);
                }
              }
            }
            function note() {
              const place = chosen();
              if (!place) { said.textContent = 'Choose a place in the list first.'; return; }
              noted.set(place.value, { x: at.x, y: at.y });
              const rest = places.slice(places.indexOf(place) + 1).find(next => !noted.has(next.value));
              said.textContent = place.value + ' noted at ' + figure(at.x) + ', ' + figure(at.y) + ' px.'
                + (noted.size < 3 ? ' ' + (3 - noted.size) + ' more at least.' : '');
              if (rest) { rest.checked = true; said.textContent += ' Next: ' + title(rest) + '.'; }
              tell();
            }
            function under(event) {
              const box = still.getBoundingClientRect();
              const x = (event.clientX - box.left - still.clientLeft) / still.clientWidth * across;
              const y = (event.clientY - box.top - still.clientTop) / still.clientHeight * down;
              at = { x: Math.min(across, Math.max(0, x)), y: Math.min(down, Math.max(0, y)) };
              look();
            }
            still.addEventListener('pointermove', under);
            still.addEventListener('click', event => { under(event); note(); });
            still.addEventListener('keydown', event => {
              const step = event.shiftKey ? 20 : event.altKey ? 0.2 : 1;
              const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
              if (way) {
                at = { x: Math.min(across, Math.max(0, at.x + way[0] * step)),
                  y: Math.min(down, Math.max(0, at.y + way[1] * step)) };
                look();
              } else if (event.key === 'Enter' || event.key === ' ') {
                note();
              } else if (event.key === 'Delete' || event.key === 'Backspace') {
                const place = chosen();
                if (place) { noted.delete(place.value); said.textContent = place.value + ' taken back.'; tell(); }
              } else { return; }
              event.preventDefault();
            });
            for (const place of places) {
              place.addEventListener('change', () => {
                const known = noted.get(place.value);
                at = known || { x: Number(place.dataset.x), y: Number(place.dataset.y) };
                look();
                said.textContent = 'Now click in the still: ' + title(place) + '.';
              });
              if (place.dataset.clicked) {
                const [x, y] = place.dataset.clicked.split(' ').map(Number);
                noted.set(place.value, { x, y });
              }
            }
            document.getElementById('picture').addEventListener('click', event => {
              const box = event.currentTarget.getBoundingClientRect();
              const x = (event.clientX - box.left) / box.width * across;
              const y = (event.clientY - box.top) / box.height * down;
              const far = place => Math.hypot(place.dataset.x - x, place.dataset.y - y);
              const near = places.reduce((best, place) => far(place) < far(best) ? place : best, places[0]);
              if (near) {
                near.checked = true;
                said.textContent = 'Now click in the still: ' + title(near) + '.';
              }
            });
            document.getElementById('back').addEventListener('click', () => { noted.clear(); tell(); });
            document.getElementById('copy').addEventListener('click', () => {
              command.select();
              const copied = navigator.clipboard ? navigator.clipboard.writeText(command.value) : Promise.reject();
              copied.then(() => { said.textContent = 'Copied.'; }, () => {
                said.textContent = document.execCommand('copy') ? 'Copied.' : 'Selected: copy it by hand.';
              });
            });
            if (photo.complete) { look(); } else { photo.addEventListener('load', look); }
            tell();
            if (chosen()) { said.textContent = 'Click in the still: ' + title(chosen()) + '.'; }
            """;

    private PageText() {}
}
