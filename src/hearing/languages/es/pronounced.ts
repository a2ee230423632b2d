// Spanish: words that are stressed otherwise than the rules have it, mostly because their accent was taken off, and verbs of three syllables.
// "A" is sounded so that it is no sound of thinking: "a la derecha".
export const PRONOUNCED = `
a a
aceptar o4xptO@
ahi oI
alli o$I
anular onvlO@
aqui o1I
atras ot@Os
consultar 1wnsvltO@
continua 1wntinVo
continuar 1wntinvO@
deshacer dxso4X@
dia dIo
dieciseis d$x4isEs
finalizar finoli4O@
mantener montxnX@
movio mwb$W
omitir wmitI@
pausar pksO@
perdon px@dWn
podria pwd@Io
podrias pwd@Ios
proseguir p@wsxgI@
reanudar @xonvdO@
regresar @xg@xsO@
repetir @xpxtI@
retomar @xtwmO@
seguir sxgI@
terminar tx@minO@
todavia twdobIo
veintidos bentidWs
veintiseis bentisEs
veintitres bentit@Xs
`;
