// Lets a hand move the cannulae in the drawing of the axis. The picture follows here at once; the numbers come from the server,
// which is told of the newest place only: while one message is under way, later moves wait and the last of them is sent.
const svgUnits = (svg, event) => {
  const matrix = svg.getScreenCTM();
  return matrix ? (event.clientY - matrix.f) / matrix.d : 0;
};

const lateralAt = (knots, z) => {
  for (let i = 0; i + 1 < knots.length; i += 2) {
    const [top, a] = knots[i];
    const [bottom, b] = knots[i + 1];
    if (z <= bottom) {
      const share = bottom > top ? Math.min(1, Math.max(0, (z - top) / (bottom - top))) : 0;
      return a + share * (b - a);
    }
  }
  return knots[knots.length - 1][1];
};

class Cannula {
  constructor(element) {
    this.element = element;
    this.shape = JSON.parse(element.dataset.shape);
    this.depthCm = this.shape.depthCm;
    this.turnDeg = this.shape.turnDeg;
    this.parts = {
      hit: element.querySelector('.lie-hit'),
      tube: element.querySelector('.lie-tube'),
      jet: element.querySelector('.lie-jet'),
      tip: element.querySelector('.lie-tip'),
      grip: element.querySelector('.lie-grip'),
      ports: [...element.querySelectorAll('rect')],
    };
    element.setAttribute('aria-valuemin', '0');
    element.setAttribute('aria-valuemax', this.shape.deepestCm.toFixed(1));
  }

  get tipMm() {
    return this.shape.tipMm + this.shape.direction * 10 * (this.depthCm - this.shape.depthCm);
  }

  x(z) {
    return lateralAt(this.shape.lateral, z) + this.shape.shiftMm;
  }

  to(depthCm) {
    const most = this.shape.deepestCm;
    const planned = this.shape.plannedCm;
    const clean = Math.round(Math.min(most, Math.max(0, depthCm)) * 100) / 100;
    this.depthCm = Math.abs(clean - planned) < 0.004 ? planned : clean;
  }

  draw() {
    const s = this.shape;
    const tip = this.tipMm;
    const points = [[s.startMm, s.edgeMm]];
    if ((tip - s.mouthMm) * s.direction > 0) {
      for (let z = s.mouthMm; (tip - z) * s.direction > 0; z += 6 * s.direction) {
        points.push([this.x(z), z]);
      }
    }
    points.push([this.x(tip), tip]);
    const path = 'M ' + points.map(([x, z]) => `${x.toFixed(1)} ${z.toFixed(1)}`).join(' L ');
    this.parts.tube.setAttribute('d', path);
    this.parts.hit.setAttribute('d', path);
    this.parts.tip.setAttribute('cx', this.x(tip).toFixed(1));
    this.parts.tip.setAttribute('cy', tip.toFixed(1));
    const width = Number(this.parts.tube.getAttribute('stroke-width')) + 2;
    let jet = '';
    s.ports.forEach((port, i) => {
      const z = tip - s.direction * port.fromTip;
      const x = this.x(z);
      const rect = this.parts.ports[i];
      rect.setAttribute('x', (x - width / 2).toFixed(1));
      rect.setAttribute('y', (z - port.half).toFixed(1));
      rect.setAttribute('width', width.toFixed(1));
      rect.setAttribute('height', (2 * port.half).toFixed(1));
      rect.setAttribute('rx', port.drains ? (width / 2).toFixed(1) : '0');
      if (port.side && !port.drains && s.canTurn) {
        // The valve lies to the patient's left, which is the right of the picture; a turned port looks shorter.
        const reach = 24 * Math.cos((this.turnDeg * Math.PI) / 180);
        const head = Math.sign(reach || 1) * 4;
        const end = x + reach;
        jet = `M ${x.toFixed(1)} ${z.toFixed(1)} L ${end.toFixed(1)} ${z.toFixed(1)} M ${(end - head).toFixed(1)} ${(z - 4).toFixed(1)} L ${end.toFixed(1)} ${z.toFixed(1)} L ${(end - head).toFixed(1)} ${(z + 4).toFixed(1)}`;
      }
    });
    this.parts.jet.setAttribute('d', jet);
    // However small the picture is, the handle stays large enough for a gloved finger.
    const ring = this.parts.grip.querySelector('circle');
    this.radius ??= Number(ring.getAttribute('r'));
    const scale = this.element.ownerSVGElement.getScreenCTM()?.a ?? 1;
    const grip = Math.max(this.radius, 23 / scale);
    ring.setAttribute('r', grip.toFixed(1));
    this.parts.grip.setAttribute('transform', `translate(${s.startMm} ${(s.edgeMm + s.direction * grip * 1.15).toFixed(1)})`);
    this.element.setAttribute('aria-valuenow', this.depthCm.toFixed(1));
    this.element.setAttribute('aria-valuetext', `${this.depthCm.toFixed(1)} cm from the skin`);
  }
}

export function mount(stage, server) {
  const leaving = new AbortController();
  const on = (target, name, act, options = {}) => target.addEventListener(name, act, { ...options, signal: leaving.signal });
  const svg = stage.querySelector('.lie-picture');
  const cannulae = [...stage.querySelectorAll('.lie-hand')].map((element) => new Cannula(element));
  const byRole = (role) => cannulae.find((c) => c.shape.role === role);
  let sequence = Number(stage.querySelector('.lie-readings').dataset.fit);
  let framed = false;
  let sending = false;
  let sent = sequence;

  const send = async () => {
    if (sending) {
      return;
    }
    sending = true;
    try {
      while (sent !== sequence && !leaving.signal.aborted) {
        sent = sequence;
        await server.invokeMethodAsync('Moved', sent, cannulae.map((c) => ({ role: c.shape.role, depthCm: c.depthCm, turnDeg: c.turnDeg })));
      }
    } catch {
      // The connection is lost: the frame of the workspace says so. The next move tries again.
      sent = -1;
    } finally {
      sending = false;
    }
  };

  const moved = () => {
    sequence += 1;
    stage.dataset.moved = String(sequence);
    if (!framed) {
      framed = true;
      requestAnimationFrame(() => {
        framed = false;
        cannulae.forEach((c) => c.draw());
      });
    }
    send();
  };

  for (const cannula of cannulae) {
    let grabbed = null;
    on(cannula.element, 'pointerdown', (event) => {
      if (event.button !== 0) {
        return;
      }
      grabbed = { id: event.pointerId, z: svgUnits(svg, event), depthCm: cannula.depthCm };
      cannula.element.setPointerCapture(event.pointerId);
      cannula.element.focus({ preventScroll: true });
      cannula.element.classList.add('held');
      event.preventDefault();
    });
    on(cannula.element, 'pointermove', (event) => {
      if (grabbed?.id !== event.pointerId) {
        return;
      }
      const before = cannula.depthCm;
      cannula.to(Math.round((grabbed.depthCm + (cannula.shape.direction * (svgUnits(svg, event) - grabbed.z)) / 10) * 10) / 10);
      if (cannula.depthCm !== before) {
        moved();
      }
    });
    const release = (event) => {
      if (grabbed?.id === event.pointerId) {
        grabbed = null;
        cannula.element.classList.remove('held');
      }
    };
    on(cannula.element, 'pointerup', release);
    on(cannula.element, 'pointercancel', release);
    on(cannula.element, 'lostpointercapture', release);
    on(cannula.element, 'keydown', (event) => {
      const step = event.shiftKey ? 1 : 0.1;
      const ways = { ArrowUp: -1, ArrowDown: 1 };
      const outward = { ArrowLeft: -1, ArrowRight: 1, PageDown: -10, PageUp: 10 };
      if (event.key in ways) {
        cannula.to(cannula.depthCm + ways[event.key] * cannula.shape.direction * step);
      } else if (event.key in outward) {
        cannula.to(cannula.depthCm + outward[event.key] * step);
      } else if (event.key === 'Home') {
        cannula.to(0);
      } else if (event.key === 'End') {
        cannula.to(cannula.shape.deepestCm);
      } else {
        return;
      }
      event.preventDefault();
      moved();
    });
  }

  on(stage, 'click', (event) => {
    const button = event.target.closest?.('[data-step]');
    if (button) {
      const cannula = byRole(button.dataset.role);
      cannula.to(cannula.depthCm + Number(button.dataset.step));
      moved();
    } else if (event.target.closest?.('[data-planned]')) {
      for (const cannula of cannulae) {
        cannula.depthCm = cannula.shape.plannedCm;
        cannula.turnDeg = 0;
      }
      stage.querySelectorAll('[data-turn]').forEach((slider) => {
        slider.value = '0';
      });
      moved();
    }
  });
  on(stage, 'input', (event) => {
    const role = event.target.dataset?.turn;
    if (role) {
      byRole(role).turnDeg = Number(event.target.value);
      moved();
    }
  });

  on(window, 'resize', () => cannulae.forEach((c) => c.draw()));
  cannulae.forEach((c) => c.draw());
  stage.dataset.ready = 'true';
  return { leave: () => leaving.abort() };
}
