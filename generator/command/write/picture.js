// A picture is made small enough here, so that it comes up at the bay.
(() => {
  const { h } = baybinderDesk;
  const mostSide = 1600;
  const smaller = async (file) => {
    const picture = await createImageBitmap(file);
    const by = Math.min(1, mostSide / Math.max(picture.width, picture.height));
    const canvas = h("canvas", { width: Math.max(1, Math.round(picture.width * by)), height: Math.max(1, Math.round(picture.height * by)) });
    const on = canvas.getContext("2d");
    on.fillStyle = "#ffffff"; // what is clear becomes paper
    on.fillRect(0, 0, canvas.width, canvas.height);
    on.drawImage(picture, 0, 0, canvas.width, canvas.height);
    return new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.85));
  };
  Object.assign(baybinderDesk, { smaller });
})();
