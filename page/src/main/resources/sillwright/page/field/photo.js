// A photo from the phone's camera, with a pin on the member where it was taken; kept as it is, sent by the digest of its bytes.

import {h, button} from './dom.js';
import {spotSays, spotWords} from './member.js';
import * as keep from './keep.js';

const TAKEN = {'image/jpeg': '.jpg', 'image/png': '.png', 'image/webp': '.webp'};

/** As JPEG where the phone gives a sort that no server takes. */
async function asPicture(file) {
  if (TAKEN[file.type]) return file;
  const bitmap = await createImageBitmap(file), canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  canvas.getContext('2d').drawImage(bitmap, 0, 0);
  return canvas.convertToBlob({type: 'image/jpeg', quality: 0.9});
}

async function take(app, member, file) {
  try {
    const blob = await asPicture(file), bytes = await blob.arrayBuffer(), digest = await crypto.subtle.digest('SHA-256', bytes);
    const sha256 = Array.from(new Uint8Array(digest), byte => byte.toString(16).padStart(2, '0')).join('');
    const pin = member && app.now.spot ? {pin: spotSays(app)} : {};
    await app.record([['photo', {file: `photos/${sha256}${TAKEN[blob.type]}`, side: app.now.side, ...pin, caption: (app.now.caption ?? '').trim()}]], {caption: '', touched: false},
      `Photo kept${pin.pin ? ', pinned ' + spotWords(app) : ''}.`, [{sha256, media: blob.type, blob: new Blob([bytes], {type: blob.type})}]);
  } catch (thrown) {
    app.trouble(thrown);
  }
}

export const takePhoto = (app, member) => h('section', {class: 'panel', 'aria-label': 'Take a photo'},
  h('p', {}, member ? app.now.spot ? `The pin goes ${spotWords(app)}.` : 'Tap the face first to set a pin, or take it without one.' : 'It shows this side.'),
  h('p', {class: 'field'}, h('label', {for: 'caption'}, 'What it shows (may stay empty)'), h('input', {id: 'caption', 'data-key': 'caption', value: app.now.caption ?? '', maxlength: 200,
    oninput: event => app.set({caption: event.target.value})})),
  h('p', {class: 'camera'}, h('label', {class: 'button first wide', for: 'camera'}, 'Take a photo'),
    h('input', {type: 'file', id: 'camera', 'data-key': 'camera', accept: 'image/*', capture: 'environment', onchange: event => event.target.files[0] && take(app, member, event.target.files[0])})));

/** The photos of this side or member that lie on this phone; others are named. */
export function photosOf(app, member) {
  const shown = app.survey.photos.filter(photo => photo.side === app.now.side && (member ? photo.pin?.member === member.id : true)).slice(-12).reverse();
  if (!shown.length) return null;
  return h('ul', {class: 'photos'}, shown.map(photo => {
    const figure = h('figure', {}, h('figcaption', {}, photo.caption || new Date(photo.atMs).toLocaleString()));
    show(figure, photo);
    return h('li', {}, figure);
  }));
}

async function show(figure, photo) {
  const sha256 = /^photos\/([0-9a-f]{64})\./.exec(photo.file)?.[1], kept = sha256 && await keep.photo(sha256);
  if (!kept) return figure.prepend(h('p', {class: 'small'}, 'not on this phone'));
  const url = URL.createObjectURL(kept.blob);
  figure.prepend(h('img', {src: url, alt: photo.caption || 'photo without a caption', onload: () => URL.revokeObjectURL(url)}));
}
