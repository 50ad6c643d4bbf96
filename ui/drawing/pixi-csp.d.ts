declare module 'pixi.js/unsafe-eval';
