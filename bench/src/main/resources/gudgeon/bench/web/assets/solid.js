// The crown and valves in the round. Loaded only when it comes into sight.
import * as THREE from '/three/three.module.min.js';

const RINGS = 90;
const RAYS = 180;

/** The view; it draws only when something has changed. */
export class Solid {
  constructor(stage) {
    this.stage = stage;
    this.renderer = new THREE.WebGLRenderer({ antialias: true, alpha: true });
    this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
    stage.append(this.renderer.domElement);
    this.camera = new THREE.PerspectiveCamera(30, 4 / 3, 1, 1000);
    this.camera.up.set(0, 0, 1);
    this.scene = new THREE.Scene();
    this.scene.add(new THREE.HemisphereLight(0xffffff, 0x8a8478, 1.8));
    const lamp = new THREE.DirectionalLight(0xffffff, 1.6);
    lamp.position.set(40, -60, 90);
    this.scene.add(lamp);
    this.turn = -60;
    this.tilt = 32;
    this.held();
    new ResizeObserver(() => this.draw()).observe(stage);
  }

  /** Shows a top end at an angle. */
  show(engine, deg) {
    if (this.engine !== engine) {
      this.scene.remove(this.piston);
      this.engine = engine;
      this.piston = this.pistonOf(engine);
      this.scene.add(this.piston);
    }
    this.piston.position.z = engine.crownAt(deg);
    this.scene.remove(this.valves);
    this.valves = new THREE.Group();
    for (const valve of engine.valves) this.valves.add(this.valveOf(engine, valve, deg));
    this.scene.add(this.valves);
    this.draw();
  }

  /** Turns the view by so many degrees round the bore and up. */
  spin(round, up) {
    this.turn += round;
    this.tilt = Math.max(-20, Math.min(85, this.tilt + up));
    this.draw();
  }

  draw() {
    if (!this.engine) return;
    const { clientWidth: width, clientHeight: height } = this.stage;
    this.renderer.setSize(width, height, false);
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
    const [a, b] = [this.turn, this.tilt].map((d) => (d * Math.PI) / 180);
    const far = this.engine.bore * 2.9;
    this.camera.position.set(far * Math.cos(b) * Math.cos(a), far * Math.cos(b) * Math.sin(a), far * Math.sin(b));
    this.camera.lookAt(0, 0, -2);
    this.renderer.render(this.scene, this.camera);
  }

  held() {
    let from = null;
    this.stage.addEventListener('pointerdown', (e) => { from = e; this.stage.setPointerCapture(e.pointerId); });
    this.stage.addEventListener('pointermove', (e) => {
      if (!from) return;
      this.spin((from.clientX - e.clientX) * 0.5, (e.clientY - from.clientY) * 0.4);
      from = e;
    });
    for (const end of ['pointerup', 'pointercancel']) this.stage.addEventListener(end, () => { from = null; });
    const keys = { ArrowLeft: [-10, 0], ArrowRight: [10, 0], ArrowUp: [0, 8], ArrowDown: [0, -8] };
    this.stage.addEventListener('keydown', (e) => {
      if (keys[e.key]) { this.spin(...keys[e.key]); e.preventDefault(); }
    });
  }

  pistonOf(engine) {
    const group = new THREE.Group();
    const half = engine.land / 2;
    const points = [];
    const faces = [];
    for (let i = 0; i <= RINGS; i++) {
      for (let j = 0; j < RAYS; j++) {
        const r = (half * i) / RINGS;
        const a = (2 * Math.PI * j) / RAYS;
        const [x, y] = [r * Math.cos(a), r * Math.sin(a)];
        points.push(x, y, engine.surface(x * 0.9999, y * 0.9999));
        if (i < RINGS) {
          const [p, q] = [i * RAYS + j, i * RAYS + ((j + 1) % RAYS)];
          faces.push(p, p + RAYS, q, q, p + RAYS, q + RAYS);
        }
      }
    }
    const crown = new THREE.BufferGeometry();
    crown.setAttribute('position', new THREE.Float32BufferAttribute(points, 3));
    crown.setIndex(faces);
    crown.computeVertexNormals();
    const metal = new THREE.MeshStandardMaterial({ color: 0xb9b4a6, metalness: 0.2, roughness: 0.6, side: THREE.DoubleSide });
    group.add(new THREE.Mesh(crown, metal));
    const skirt = new THREE.Mesh(new THREE.CylinderGeometry(half, half, 12, RAYS, 1, true), metal);
    skirt.rotation.x = Math.PI / 2;
    skirt.position.z = -6;
    group.add(skirt);
    return group;
  }

  valveOf(engine, valve, deg) {
    const { face, axis } = engine.valveAt(valve, deg);
    const [r, m] = [valve.head / 2, valve.margin];
    const outline = [[0, 0], [r, 0], [r, m], [r * 0.38, m + r * 0.45], [r * 0.24, m + r * 0.8], [r * 0.24, 26], [0, 26]];
    const body = new THREE.LatheGeometry(outline.map(([x, y]) => new THREE.Vector2(x, y)), 64);
    const colour = getComputedStyle(document.documentElement).getPropertyValue(`--${engine.standing(valve, deg)}`).trim();
    const mesh = new THREE.Mesh(body, new THREE.MeshStandardMaterial({ color: colour, roughness: 0.55, side: THREE.DoubleSide }));
    mesh.quaternion.setFromUnitVectors(new THREE.Vector3(0, 1, 0), new THREE.Vector3(...axis));
    mesh.position.set(...face);
    return mesh;
  }
}
