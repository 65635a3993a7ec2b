(()=>{var N=null,eh=i=>{N=i},xf=()=>eh(JSON.parse(document.getElementById("data").textContent)),rt={apply:null,moved:null,cover:null,old:null},Te={x:0,h:0,option:0,fix:null,picked:null,step:null},ee=i=>document.querySelector(i),Kn=i=>[...document.querySelectorAll(i)];function z(i,e={},...t){let n=document.createElement(i);for(let[s,r]of Object.entries(e))if(!(r===!1||r===null||r===void 0))if(s==="on")for(let[o,a]of Object.entries(r))n.addEventListener(o,a);else s==="class"?n.className=r:n.setAttribute(s,r===!0?"":r);for(let s of t.flat(1/0))s!=null&&s!==""&&n.append(s);return n}var on=i=>String(i).replace(/[&<>"']/g,e=>`&#${e.charCodeAt(0)};`);function Ft(i){let e=document.createElement("template");return e.innerHTML=i,e.content.firstElementChild}var wa=()=>matchMedia("(prefers-reduced-motion: reduce)").matches,Jr=()=>{if(document.documentElement.dataset.paper)return!1;let i=document.documentElement.dataset.theme;return i?i==="dark":matchMedia("(prefers-color-scheme: dark)").matches};var oi="in",th=i=>{oi=i},dn=()=>oi,N0=(i,e)=>{let t=Math.floor(Math.abs(i)*e+.5),n=Math.floor(t/e),s=t%e,r=e;for(;s&&s%2===0;)s/=2,r/=2;return(i<0&&t?"−":"")+(s?(n?`${n} `:"")+`${s}/${r}`:String(n))},vf=(i,e=16)=>`${N0(i,e)} in`,He=i=>oi==="mm"?`${i<-.019?"−":""}${Math.floor(Math.abs(i)*25.4+.5)} mm`:vf(i),Ta=i=>He(i).replace(/ (in|mm)$/,""),xs=i=>{if(oi==="mm")return Math.abs(i)*25.4>=1e3?`${(i*.0254).toFixed(2)} m`:He(i);let e=Math.floor(Math.abs(i)+.5);if(e<12)return vf(i,1);let t=Math.floor(e/12),n=e%12;return`${i<0?"−":""}${t} ft${n?` ${n} in`:""}`},yf={cfm:[.4719474432,"l/s",0],"ft/min":[.00508,"m/s",1],"in wg":[249.08891,"Pa",0],ft:[.3048,"m",1],lb:[.45359237,"kg",0]},D0={cfm:0,"ft/min":0,"in wg":2,ft:0,lb:0},fn=(i,e)=>{if(e==="in")return He(i);if(/^of /.test(e))return`${+i.toPrecision(2)} ${e}`.replace("-","−");let[t,n,s]=e in yf?oi==="mm"?yf[e]:[1,e,D0[e]]:[1,e,null];return`${(s===null?String(+i.toPrecision(4)):(i*t).toFixed(s)).replace("-","−")} ${n}`.trim()},Bt=i=>oi==="mm"?`${Math.round(i*.4719474432)}`:`${Math.round(i)}`,Pn=()=>oi==="mm"?"l/s":"cfm",U0=["no elbow","one elbow","two elbows","three elbows","four elbows","five elbows","six elbows"],bf=i=>Math.abs(i-Math.round(i))<1e-9&&U0[Math.round(i)]||`${i} elbows`,Wi=i=>i<0?"left":"right",Zn=()=>oi==="mm"===N.scene.metric,Qr=i=>{let e=oi;nh();try{return i()}finally{oi=e}},Ea=()=>`in ${N.scene.metric?"millimetres":"inches"}, as the scene is written`,js=i=>Zn()||!(N.scene.metric?/\d (mm|m|cm)\b/:/\d (in|ft)\b/).test(i)?i:`${i.replace(/\.$/,"")} (${Ea()})${/\.$/.test(i)?".":""}`,nh=()=>th(N.scene.metric?"mm":"in");var eo={e0:{name:"no elbow",height:1},e1:{name:"1 elbow",height:.72},e2:{name:"2 elbows",height:.46},e3:{name:"3 or more",height:.38},bad:{name:"blocked",height:.3},none:{name:"no place for the hood",height:.12}},O0=["broken","close","fine","open"],sh=.02,pn=()=>N.map?N.map.x:[N.scene.hood.x],ai=()=>N.map?N.map.h:[Mn()],Mn=()=>N.scene.hood.bottom-N.scene.cook.height,Ln=(i,e)=>i.reduce((t,n)=>Math.abs(n-e)<Math.abs(t-e)?n:t,i[0]),oh=(i,e)=>Math.abs(i-N.scene.hood.x)<sh&&Math.abs(e-Mn())<sh,ih={map:null,codes:new Set},Tf=i=>i.filter(([e,t])=>t===0&&N.map.rules[e].must&&!N.map.rules[e].waived).map(([e])=>N.map.rules[e].code);function F0(){if(ih.map!==N.map){let i=N.map?N.map.cells.flat().filter(e=>e[1]>=0).map(e=>new Set(Tf(e[8]))):[];ih={map:N.map,codes:new Set(i.length?[...i[0]].filter(e=>i.every(t=>t.has(e))):[])}}return ih.codes}var Ef=(i,e,t,n)=>i==="No place"?"none":!t||n.some(s=>!F0().has(s))?"bad":`e${Math.min(3,Math.ceil(e-1e-9))}`,ah=i=>Ef(i.verdict,i.elbows,i.words,Tf(i.findings));function $i(i,e){let{map:t}=N,n=t.h.indexOf(Ln(t.h,e)),s=t.x.indexOf(Ln(t.x,i)),[r,o,a,c,l,h,d,u,f,p,_=-1]=t.cells[n][s];return{verdict:t.verdicts[r],words:o<0?"":t.words[o],line:a<0?null:t.lines[a],length:c,elbows:l,turns:_<0?bf(l):t.words[_],boxed:h,air:d,why:u<0?null:t.whys[u],findings:f,reason:p,x:t.x[s],h:t.h[n]}}var Aa=(i,e)=>ah($i(i,e));function Af(i){if(!N.map)return[];let e=N.map.x,t=[];return e.forEach((n,s)=>{let r=$i(n,i),o=ah(r),a=s?(e[s-1]+n)/2:Math.max(0,n-(e[1]-n)/2||0),c=s<e.length-1?(n+e[s+1])/2:Math.min(N.scene.width,n+(n-e[s-1])/2||n),l=/^Straight back/.test(r.words),h=o==="bad"&&r.why&&r.why.blockers[0]?r.why.blockers[0][1]:o==="none"?r.reason:"",d=t[t.length-1];d&&d.kind===o&&d.by===h&&d.back===l&&!!d.boxed==r.boxed>0?(d.b=c,d.xs.push(n)):t.push({kind:o,by:h,back:l,a,b:c,xs:[n],boxed:r.boxed>0,tight:r.verdict==="Works, tight"})}),t}function lh(i,[e,t,n,s,r,...o]){return{...i[e],state:O0[t],measured:n,limit:s,margin:r,place:o.length===3?o:null}}var Mf={broken:0,close:1,fine:2,open:3};function Rf(i){return i.sort((e,t)=>Mf[e.state]-Mf[t.state]||t.must-e.must||(e.code<t.code?-1:e.code>t.code?1:0)),i.forEach((e,t)=>{e.n=t+1}),i}var B0=60,to=i=>{if(i.margin===null)return i.measured===null?"":fn(i.measured,i.unit);if(/^of /.test(i.unit))return fn(i.measured,i.unit);let e=Math.abs(i.margin),t=i.unit==="in"&&e>=B0?xs(e):fn(e,i.unit);return i.state==="broken"?`${t} ${i.relation==="at most"||i.relation==="exactly"&&i.measured>i.limit?"over":"short"}`:`${t} spare`},no=i=>i.limit===null||!i.relation&&i.measured!==null?"":`${i.relation||(i.measured===null?"asks for":"")} ${fn(i.limit,i.unit)}`.trim(),k0=i=>i===null?"flow unknown":`${Bt(i)} of ${Bt(N.scene.rated)} ${Pn()}`,Cf=(i,e,t,n,s)=>`${i}: ${e}, ${xs(t)}${n>0?`, ${xs(n)} boxed in the room`:""}, ${k0(s)}.`,If=i=>i[0].toLowerCase()+i.slice(1),z0=1/64;function Pf([i,e,t,,,,n]){return n==="zone"?i?`${/^the /.test(e)?"":"the "}${e} is in the way`:e:n==="straight"?`${e} would be ${He(t)} too short`:n==="keep-out"?e==="lot line"?"the lot line is too near for a cap":`${e} is ${t<z0?"":`${He(t)} `}too near for a cap`:`${e} is ${t>0?`${He(t)} into`:"too close to"} the duct`}function Lf(i,e){let t=i&&i.blockers[0];return`Blocked: ${t?Pf(t):"no way out was found"}.${e?` ${e.shift&&!e.fix?`Shift ${He(Math.abs(e.shift))} ${Wi(e.shift)} and ${e.elbows===0?`it goes straight ${e.back?"back":"up"}`:`it works with ${e.turns}`}`:e.title}.`:""}`}function rh(i,e){if(i===0)return"Simpler? There is none: no elbow is the fewest a duct can have.";let t=e&&e.blockers[0];if(!t)return"";let n=`Not ${e.wanted}: ${Pf(t)}.`;return t[6]!=="zone"&&e.sure&&e.shift!==null&&(n+=` Shift ${e.cook?"hood and cooktop ":""}${He(Math.abs(e.shift))} ${Wi(e.shift)} and it goes ${e.goes}${!e.cook&&e.against.length?` (against advice: ${e.against.map(If).join(" and ")})`:""}.`),n}var Nf=i=>i.filter(e=>e.state==="broken"&&!e.waived).reduce((e,t)=>e.set(t.code,(e.get(t.code)||0)+1),new Map),Df=i=>Nf(i.findings.map(e=>lh(N.map.rules,e))),Sf=3;function H0(i){let e=i.filter(o=>o.state==="broken"&&!o.waived),t=e.filter(o=>!o.must).length,n=[...new Set(e.filter(o=>o.must).sort((o,a)=>o.code<a.code?-1:o.code>a.code?1:0).map(o=>If(o.title)))],s=n.length-Sf,r=[...s<=1?n:[...n.slice(0,Sf),`${s} more musts`],...t?[`${t} more, advice only`]:[]].join("; ");return`To clear first: ${r[0].toUpperCase()}${r.slice(1)}.`}function wf(i,e){if(!e.verdict.startsWith("Works"))return!1;if(!i.verdict.startsWith("Works"))return!0;let t=Nf(i.findings),n=Df(e);return[...n].every(([s,r])=>r<=(t.get(s)||0))&&[...t].some(([s,r])=>r>(n.get(s)||0))}function Ra(i){if(!N.map)return[];let e=[],{x:t,h:n}=i;for(let s of[-1,1]){let r=N.map.x.filter(a=>(a-t)*s>sh).sort((a,c)=>(a-c)*s),o=r.find(a=>wf(i,$i(a,n)));if(o!==void 0&&(e.push(o),$i(o,n).verdict!=="Works")){let a=r.find(c=>$i(c,n).verdict==="Works"&&wf(i,$i(c,n)));a!==void 0&&Math.abs(a-o)<16&&e.push(a)}}return e.map(s=>{let r=$i(s,n),o=[...Df(r).values()].reduce((a,c)=>a+c,0);return{x:s,h:n,shift:s-t,verdict:r.verdict,elbows:r.elbows,turns:r.turns,back:/^Straight back/.test(r.words),broken:o,title:`Shift ${He(Math.abs(s-t))} ${Wi(s-t)}`,note:`planned again: ${o} broken, ${r.turns}${r.verdict==="Works, tight"?", tight":""}${N.map.follows?"; the cooktop goes with the hood":""}`}}).sort((s,r)=>Math.abs(s.shift)-Math.abs(r.shift))}function G0(i,e,t){let n=i.p.map(([u,f,p],_)=>[u+e,f,_?p:p+t]),s=(u,f)=>u.map((p,_)=>p-f[_]),r=u=>{let f=Math.hypot(...u);return u.map(p=>p/f)},o=n.slice(1).map((u,f)=>r(s(u,n[f]))),a=[],c=i.s,l=parseInt(N.scene.duct.gores,10)||4,h=n[0];o.forEach((u,f)=>{let p=i.b[f],_=p?p[0]*Math.tan(p[1]*Math.PI/360):0,g=n[f+1],m=g.map((b,S)=>b-u[S]*_),v=Math.hypot(...s(m,h)),M=i.w[f]>=0?[0,1,2].map(b=>+(b===i.w[f])):null;if(v>.001&&a.push({k:"straight",a:h,b:m,d:u,t:u,s:c,o:c,l:v,w:M}),p){let b=o[f+1],S=g.map((y,w)=>y+b[w]*_),T=Math.max(2,Math.floor((l-1)*p[1]/90+.5)+1);a.push({k:"elbow",a:m,b:S,d:u,t:b,s:c,o:c,l:p[0]*p[1]*Math.PI/180,r:p[0],g:p[1],n:T,w:M}),h=S}});let d=N.faces[i.f];return{parts:a,end:{face:i.f,kind:d?d.kind:null,at:n[n.length-1],d:o[o.length-1],label:d?d.label:""}}}function Uf(i,e){let{hood:t}=N.scene,n=N.scene.cook.height+e-t.bottom,s=i-t.x;return N.plan.wanted.map((r,o)=>[r[0]+s,r[1],t.outlet==="rear"||o===0?r[2]+n:r[2]])}function Of(i,e,t,n,s){let r=[...i.findings,...n?n.findings:[]].map(d=>lh(i.rules,d)),o=n&&n.route,a=r.some(d=>d.state==="broken"&&d.must&&!d.waived),c=s?i.verdict:a?"Blocked":r.some(d=>d.state==="close"||d.state==="broken")?"Works, tight":"Works",l=js(i.answer),h=Zn()?i.second:`${rh(o?o.elbows:-1,i.why)}${/Proven\.$/.test(i.second)?" Proven.":""}`.trim();return o&&(!s||!Zn())&&(l=Cf(o.words,o.turns,o.length,o.boxed,n.air)),s||(h=`Way ${o.id}. Way ${i.options[0].route.id} is ${i.outcome==="proven best"?"the best, proven":"the best found here"}.`),{x:e,h:t,verdict:c,option:n,kind:Ef(c,o?o.elbows:0,o,r.filter(d=>d.state==="broken"&&d.must&&!d.waived).map(d=>d.code)),words:o?o.words:"",text:l,second:h,findings:Rf(r),parts:o?o.parts:null,end:o?o.end:null,elbows:o?o.elbows:null,length:o?o.length:0,air:n?n.air:null,why:i.why,wanted:o?null:Uf(e,t)}}var V0=/^(Shift(?: hood and cooktop)?) [^a-z]+ (?:in|mm) (left|right)(?=$|,)/,Ff=i=>Zn()||i.x===null?js(i.words):js(i.words.replace(V0,(e,t,n)=>`${t} ${He(Math.abs(i.x-N.scene.hood.x))} ${n}`));function W0(i){return N.fixes.length?N.fixes.map((e,t)=>({x:e.x??i.x,h:e.h??i.h,shift:e.x===null?0:e.x-i.x,verdict:e.verdict,elbows:e.elbows,title:Ff(e),note:e.recheck,more:js(e.answer),fix:e,plan:e.plan?t:null,still:!e.plan})):Ra(i)}function $0(){let{plan:i}=N,e={...Of(i,N.scene.hood.x,Mn(),i.options[Te.option]||null,Te.option===0),cook:N.scene.cook.x,planned:!0},t=W0(e);return Object.assign(e,e.option?{work:e.option.work,members:e.option.members}:{work:{measure:[],steps:[]},members:N.members}),!e.parts&&!Zn()&&e.verdict!=="No place"&&(e.text=Lf(i.why,t[0])),{...e,fixes:t,ghost:Bf(t,e.why)}}function X0(i){let e=N.fixes[i],{plan:t}=e;return{...Of(t,t.x,t.h,t.options[0],!0),cook:t.cook,planned:!1,fixes:[],ghost:null,from:Ff(e),work:null,members:t.options[0].members}}var Bf=(i,e)=>i.length&&i[0].shift?i[0].shift:e&&e.sure&&e.shift!==null?e.shift:null;function Ks(i,e){if(Te.fix!==null&&N.fixes[Te.fix]&&N.fixes[Te.fix].plan)return X0(Te.fix);if(!N.map||oh(i,e))return $0();let t=$i(i,e),n=t.line?G0(t.line,t.x,N.scene.cook.height+t.h):null,s=Rf(t.findings.map(l=>lh(N.map.rules,l))),r=Ra({...t,findings:s}),o=s.filter(l=>l.state==="broken"&&l.must&&!l.waived),a=t.verdict==="No place"?js(t.reason):Lf(t.why,r[0]),c=rh(-1,t.why);return t.line&&(a=Cf(t.words,t.turns,t.length,t.boxed,t.air),o.length&&(a=`${H0(s)} ${a}`),c=rh(t.elbows,t.why)),t.verdict==="No place"&&(c="No duct was searched: the hood itself does not fit here."),{...t,kind:ah(t),text:a,second:c,findings:s,parts:n&&n.parts,end:n&&n.end,wanted:n||t.verdict==="No place"?null:Uf(t.x,t.h),fixes:r,ghost:Bf(r,t.why),planned:!1,option:null,work:null,members:null,cook:N.scene.cook.x+(N.map.follows?t.x-N.scene.hood.x:0),elbows:t.line?t.elbows:null}}var ch=`<defs>
<pattern id="p-e0" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="var(--up)"/></pattern>
<pattern id="p-e1" width="6" height="5" patternUnits="userSpaceOnUse"><rect width="6" height="5" fill="var(--wall)"/><rect width="6" height="1.6" y="1.6" fill="var(--pat)"/></pattern>
<pattern id="p-e2" width="8" height="8" patternUnits="userSpaceOnUse"><rect width="8" height="8" fill="var(--off)"/></pattern>
<pattern id="p-e3" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="var(--off)"/><path d="M3 0V6" stroke="var(--offline)" stroke-width="1.2"/></pattern>
<pattern id="p-bad" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="7" height="7" fill="#fff"/><rect width="4" height="7" fill="var(--bar)"/></pattern>
<pattern id="p-none" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="1.5" cy="1.5" r="1.1" fill="var(--none)"/><circle cx="4.5" cy="4.5" r="1.1" fill="var(--none)"/></pattern>
</defs>`,q0="M0 -4.6A4.6 4.6 0 1 1 -.01 -4.6M-3 -3L3 3M-3 3L3 -3",Y0=(i,e,t,n,s,r=!1)=>{let o=r&&i==="e0"?q0:{e0:"M0 5V-5M-3 -2L0 -5.4L3 -2",e1:"M-3 5V0Q-3 -2.5 -.5 -2.5H4M1.4 -5L4.4 -2.5L1.4 0",e2:"M-3 5.4V2L3 -1V-5M.4 -2.6L3 -5.6L5.6 -2.6",e3:"M-4 5.4V2H1V-1H4V-5M1.4 -2.6L4 -5.6L6.6 -2.6"}[i];return o?`<path d="${o}" transform="translate(${e} ${t}) scale(${n})" fill="none" stroke="${s}" stroke-width="1.7" stroke-linecap="round" stroke-linejoin="round"/>`:""},j0=i=>{let e=/^(\p{L})\p{L}*\D*?(\d+)/u.exec(i);return e?e[1].toUpperCase()+e[2]:""};function kf(i,e,t,n){let{X:s,s:r,y:o,height:a,loupe:c,visible:l}=e,h=-1e9,d="";for(let u of i){if(!l(u.a-1,u.b+1))continue;let f=Math.max((u.b-u.a)*r,n==="jo"?4:3.4),p=s((u.a+u.b)/2),_=p-f/2,g=t.has(u.id);d+=`<g class="${n}${g?" hit":""}"><rect x="${_}" y="${o}" width="${f}" height="${a}"/>`,n==="jo"&&(d+=`<path d="M${_} ${o}l${f} ${a}m0 ${-a}l${-f} ${a}"/>`),u.n&&(p-h>(c?60:15)||g)&&(d+=c?`<text x="${p+f/2+4}" y="${o+(n==="jo"?12:8)}" style="text-anchor:start">${n==="jo"?"joist":"stud"} ${u.n}</text>`:`<text x="${p}" y="${n==="jo"?o-3:o+a+10}">${u.n}</text>`,h=p),d+="</g>"}return d}function K0(i){let{X:e,s:t,x0:n,x1:s,ty:r,th:o,loupe:a,visible:c}=i,l=N.scene.width,h=t<3.6,d="",u=_=>_>0&&_<l-.8&&!(a&&(_-n<.7||s-_<.7));if(dn()==="mm"){let _=a?50:t<2.6?500:t<8.2?200:100;for(let g=0;g<=l*25.4+1e-6;g+=10){let m=g/25.4;!c(m,m)||h&&!a&&g%50||(d+=`<path class="tk" d="M${e(m)} ${r}v${g%100===0?13:g%50===0?9:5}"/>`,g%_===0&&u(m)&&(d+=`<text class="${g%1e3===0?"nb":"nm"}" x="${e(m)}" y="${r+o-5}" text-anchor="middle">${g}</text>`))}return d}let f=a?.25:h?2:.5,p=a?1:t<4.4?12:t<6.8?6:4;for(let _=0;_<=l+1e-6;_+=f){if(!c(_,_))continue;let g=_%12===0,m=_%1===0,v=_*2%1===0;d+=`<path class="tk${g?" ft":""}" d="M${e(_)} ${r}v${g?14:m?_%4===0?11:8:v?a?7:5:4}"/>`,m&&_%p===0&&u(_)&&(d+=`<text class="${g?"nb":"nm"}" x="${e(_)}" y="${r+o-5}" text-anchor="middle">${_}</text>`)}return d}function Z0(i,e){let t=e&&i.find(r=>e.x>=r.a-1e-6&&e.x<r.b-1e-6);if(!t||t.kind===e.kind&&t.back===e.back)return i;let n=Math.max(t.a,e.x-.5),s=Math.min(t.b,e.x+.5);return i.flatMap(r=>r!==t?[r]:[{...r,b:n},{...r,...e,a:n,b:s},{...r,a:s}].filter(o=>o.b-o.a>1e-6))}function J0(i,e,t){let{X:n,visible:s,x0:r,x1:o,by:a,bh:c,loupe:l}=i,h="",d=-1e9;for(let u of e){if(!s(u.a,u.b))continue;let f=Math.max(u.a,r),p=Math.min(u.b,o),_=c*eo[u.kind].height,g=n(f),m=n(p)-n(f),v=t>=u.a-1e-6&&t<u.b-1e-6,M=u.kind==="bad"?"var(--bar)":u.kind==="e2"||u.kind==="e3"?"var(--offline)":u.boxed?"var(--ink)":"none";h+=`<g class="zn ${u.kind}${v?" on":""}"><title>${He(u.a)} to ${He(u.b)}: ${eo[u.kind].name}${u.boxed?", boxed in the room":""}${u.by?` (${on(u.by)})`:""}</title>
<rect x="${g+.4}" y="${a-_}" width="${Math.max(m-.8,1)}" height="${_}" fill="url(#p-${u.kind})" stroke="${M}" stroke-width="1.1" ${u.boxed?'stroke-dasharray="3 2"':""}/>`,m>13&&(u.kind==="e0"||l||m>22)&&(h+=Y0(u.kind,g+m/2,a-_/2,Math.min(1,m/16,_/13),u.kind==="e0"?"var(--onup)":u.kind==="e1"?"#fff":"#2b1c00",u.back));let b=u.kind==="bad"?j0(u.by):"";b&&m>15&&g+m/2-d>20&&(h+=`<text class="bn" x="${g+m/2}" y="${a-_-3}">${b}</text>`,d=g+m/2),h+="</g>"}return h}function Q0(i){let{X:e,visible:t,x0:n,x1:s,by:r,bh:o}=i,a="",c=[...N.tape.openings,...N.tape.things];for(let l of c){if(!t(l.a,l.b))continue;let h=e(Math.max(l.a,n)),d=e(Math.min(l.b,s)),u=d-h;N.map||(a+=`<rect class="th" x="${h}" y="${r-o*.3}" width="${u}" height="${o*.3}" fill="url(#p-none)"/>`),l.label.length*6.1<u&&(a+=`<text class="nn" x="${(h+d)/2}" y="${r-o*(N.map?.12:.3)-5}">${on(l.label)}</text>`)}return a}function hh({width:i,s:e,left:t,x0:n=0,x1:s=N.scene.width,x:r,h:o,hit:a,loupe:c=!1,bad:l=!1,own:h=null}){let d=T=>t+(T-n)*e,u=(T,y)=>y>=n&&T<=s,f=c?4:14,p=c?30:N.map?36:20,_=f+18+p,g=_+3,m=c?30:34,v={X:d,s:e,x0:n,x1:s,by:_,bh:p,ty:g,th:m,loupe:c,visible:u},M="";c||(M+=`<g class="rowlab"><text x="${t-9}" y="${f+11}">${N.tape.joists.length?on(N.tape.kind):""}</text><text x="${t-9}" y="${_-9}">${N.map?"route":N.tape.openings.length+N.tape.things.length?"in the way":""}</text><text x="${t-9}" y="${g+m+13}">${N.tape.studs.length?"studs":""}</text></g>`),!c&&N.tape.along&&(M+=`<text class="nn" x="${t+4}" y="${f+11}" style="text-anchor:start">${on(N.tape.along)} run along this wall</text>`),M+=kf(N.tape.joists,{...v,y:f,height:16},a,"jo")+J0(v,Z0(Af(o),h),r)+(c?"":Q0(v)),M+=`<rect class="blade" x="${d(n)}" y="${g}" width="${(c?i:d(N.scene.width))-d(n)}" height="${m}"/>${K0(v)}`,c||(M+=`<path class="hook" d="M${d(0)} ${g-3}h-5v${m+14}h4.2v-9h.8z"/>`),M+=kf(N.tape.studs,{...v,y:g+m,height:c?8:9},a,"st");let b=d(r),S=N.scene.hood.width*e;return M+=`<g class="needle${l?" bad":""}">${c?"":`<path d="M${b-S/2} ${g+m-1}v5h${S}v-5"/>`}<path class="ndl" d="M${b} ${f-4}V${_-p-3}M${b} ${g}V${g+m+6}"/></g>`,{markup:ch+M,height:g+m+(c?14:22),ty:g,th:m,at:b}}/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */var Bl="187",rs={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},os={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},Dp=0,nu=1,Up=2;var Ds=1,Op=2,Nr=3,An=0,yn=1,nn=2,Us=0,Dr=1,iu=2,su=3,ru=4,Fp=5;var Os=100,Bp=101,kp=102,zp=103,Hp=104,Gp=200,Vp=201,Wp=202,$p=203,ou=204,au=205,Xp=206,qp=207,Yp=208,jp=209,Kp=210,Zp=211,Jp=212,Qp=213,em=214,al=0,ll=1,cl=2,fr=3,hl=4,ul=5,dl=6,fl=7,Qo=0,tm=1,nm=2,Vn=0,lu=1,cu=2,hu=3,uu=4,du=5,fu=6,pu=7,kh="attached",im="detached",mu=300,Fs=301,Ur=302,kl=303,zl=304,Ji=1e3,Hn=1001,pr=1002,Dt=1003,Hl=1004;var Bs=1005;var Vt=1006,Or=1007;var Wn=1008;var Rn=1009,gu=1010,_u=1011,Fr=1012,Gl=1013,ii=1014,Fn=1015,si=1016,Vl=1017,Wl=1018,ks=1020,xu=35902,yu=35899,vu=1021,bu=1022,$n=1023,Ri=1026,Bi=1027,$l=1028,Xl=1029,as=1030,ql=1031;var Yl=1033,ea=33776,ta=33777,na=33778,ia=33779,jl=35840,Kl=35841,Zl=35842,Jl=35843,Ql=36196,ec=37492,tc=37496,nc=37488,ic=37489,sa=37490,sc=37491,rc=37808,oc=37809,ac=37810,lc=37811,cc=37812,hc=37813,uc=37814,dc=37815,fc=37816,pc=37817,mc=37818,gc=37819,_c=37820,xc=37821,yc=36492,vc=36494,bc=36495,Mc=36283,Sc=36284,ra=36285,wc=36286;var Ts=2300,Es=2301,rl=2302,zh=2303,Hh=2400,Gh=2401,Vh=2402,sm=2500;var Mu=0,oa=1,Br=2,rm=3200;var zs=0,om=1,ki="",Ct="srgb",_n="srgb-linear",_o="linear",vt="srgb";var ol=7680;var am=519,lm=512,cm=513,hm=514,Su=515,um=516,dm=517,wu=518,Tu=519,Eu=35044;var Au="300 es",Gn=2e3,mr=2001;function e_(i){for(let e=i.length-1;e>=0;--e)if(i[e]>=65535)return!0;return!1}function t_(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function gr(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function fm(){let i=gr("canvas");return i.style.display="block",i}var zf={},_r=null;function xo(...i){let e="THREE."+i.shift();_r?_r("log",e,...i):console.log(e,...i)}function pm(i){let e=i[0];if(typeof e=="string"&&e.startsWith("TSL:")){let t=i[1];t&&t.isStackTrace?i[0]+=" "+t.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function We(...i){i=pm(i);let e="THREE."+i.shift();if(_r)_r("warn",e,...i);else{let t=i[0];t&&t.isStackTrace?console.warn(t.getError(e)):console.warn(e,...i)}}function Je(...i){i=pm(i);let e="THREE."+i.shift();if(_r)_r("error",e,...i);else{let t=i[0];t&&t.isStackTrace?console.error(t.getError(e)):console.error(e,...i)}}function ws(...i){let e=i.join(" ");e in zf||(zf[e]=!0,We(...i))}function mm(i,e,t){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(e,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,t);break;default:n()}}setTimeout(r,t)})}var gm={[al]:al,[cl]:dl,[hl]:hl,[fr]:ul,[ll]:ll,[dl]:cl,[fl]:fl,[ul]:fr},ti=class{addEventListener(e,t){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[e]===void 0&&(n[e]=[]),n[e].indexOf(t)===-1&&n[e].push(t)}hasEventListener(e,t){let n=this._listeners;return n===void 0?!1:n[e]!==void 0&&n[e].indexOf(t)!==-1}removeEventListener(e,t){let n=this._listeners;if(n===void 0)return;let s=n[e];if(s!==void 0){let r=s.indexOf(t);r!==-1&&s.splice(r,1)}}dispatchEvent(e){let t=this._listeners;if(t===void 0)return;let n=t[e.type];if(n!==void 0){e.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,e);e.target=null}}},an=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],Hf=1234567,ur=Math.PI/180,As=180/Math.PI;function ri(){let i=Math.random()*4294967295|0,e=Math.random()*4294967295|0,t=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(an[i&255]+an[i>>8&255]+an[i>>16&255]+an[i>>24&255]+"-"+an[e&255]+an[e>>8&255]+"-"+an[e>>16&15|64]+an[e>>24&255]+"-"+an[t&63|128]+an[t>>8&255]+"-"+an[t>>16&255]+an[t>>24&255]+an[n&255]+an[n>>8&255]+an[n>>16&255]+an[n>>24&255]).toLowerCase()}function ot(i,e,t){return Math.max(e,Math.min(t,i))}function Ru(i,e){return(i%e+e)%e}function n_(i,e,t,n,s){return n+(i-e)*(s-n)/(t-e)}function i_(i,e,t){return i!==e?(t-i)/(e-i):0}function po(i,e,t){return(1-t)*i+t*e}function s_(i,e,t,n){return po(i,e,1-Math.exp(-t*n))}function r_(i,e=1){return e-Math.abs(Ru(i,e*2)-e)}function o_(i,e,t){return i<=e?0:i>=t?1:(i=(i-e)/(t-e),i*i*(3-2*i))}function a_(i,e,t){return i<=e?0:i>=t?1:(i=(i-e)/(t-e),i*i*i*(i*(i*6-15)+10))}function l_(i,e){return i+Math.floor(Math.random()*(e-i+1))}function c_(i,e){return i+Math.random()*(e-i)}function h_(i){return i*(.5-Math.random())}function u_(i){i!==void 0&&(Hf=i);let e=Hf+=1831565813;return e=Math.imul(e^e>>>15,e|1),e^=e+Math.imul(e^e>>>7,e|61),((e^e>>>14)>>>0)/4294967296}function d_(i){return i*ur}function f_(i){return i*As}function p_(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function m_(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function Cu(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function g_(i,e,t,n,s){let r=Math.cos,o=Math.sin,a=r(t/2),c=o(t/2),l=r((e+n)/2),h=o((e+n)/2),d=r((e-n)/2),u=o((e-n)/2),f=r((n-e)/2),p=o((n-e)/2);switch(s){case"XYX":i.set(a*h,c*d,c*u,a*l);break;case"YZY":i.set(c*u,a*h,c*d,a*l);break;case"ZXZ":i.set(c*d,c*u,a*h,a*l);break;case"XZX":i.set(a*h,c*p,c*f,a*l);break;case"YXY":i.set(c*f,a*h,c*p,a*l);break;case"ZYZ":i.set(c*p,c*f,a*h,a*l);break;default:We("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function Tc(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Iu(i,e){if(e.constructor===Float32Array)return i;let t=Tc(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/t,-1)}function Pu(i,e){if(e.constructor===Float32Array)return i;let t=Tc(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*t)}var kr={DEG2RAD:ur,RAD2DEG:As,generateUUID:ri,clamp:ot,euclideanModulo:Ru,mapLinear:n_,inverseLerp:i_,lerp:po,damp:s_,pingpong:r_,smoothstep:o_,smootherstep:a_,randInt:l_,randFloat:c_,randFloatSpread:h_,seededRandom:u_,degToRad:d_,radToDeg:f_,isPowerOfTwo:p_,ceilPowerOfTwo:m_,floorPowerOfTwo:Cu,setQuaternionFromProperEuler:g_,normalize:Pu,denormalize:Iu},Fu=class Fu{constructor(e=0,t=0){this.x=e,this.y=t}get width(){return this.x}set width(e){this.x=e}get height(){return this.y}set height(e){this.y=e}set(e,t){return this.x=e,this.y=t,this}setScalar(e){return this.x=e,this.y=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;default:throw new Error("THREE.Vector2: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y)}copy(e){return this.x=e.x,this.y=e.y,this}add(e){return this.x+=e.x,this.y+=e.y,this}addScalar(e){return this.x+=e,this.y+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this}subScalar(e){return this.x-=e,this.y-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this}multiply(e){return this.x*=e.x,this.y*=e.y,this}multiplyScalar(e){return this.x*=e,this.y*=e,this}divide(e){return this.x/=e.x,this.y/=e.y,this}divideScalar(e){return this.multiplyScalar(1/e)}applyMatrix3(e){let t=this.x,n=this.y,s=e.elements;return this.x=s[0]*t+s[3]*n+s[6],this.y=s[1]*t+s[4]*n+s[7],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this}clamp(e,t){return this.x=ot(this.x,e.x,t.x),this.y=ot(this.y,e.y,t.y),this}clampScalar(e,t){return this.x=ot(this.x,e,t),this.y=ot(this.y,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(ot(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(e){return this.x*e.x+this.y*e.y}cross(e){return this.x*e.y-this.y*e.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let n=this.dot(e)/t;return Math.acos(ot(n,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,n=this.y-e.y;return t*t+n*n}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this}equals(e){return e.x===this.x&&e.y===this.y}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this}rotateAround(e,t){let n=Math.cos(t),s=Math.sin(t),r=this.x-e.x,o=this.y-e.y;return this.x=r*n-o*s+e.x,this.y=r*s+o*n+e.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}};Fu.prototype.isVector2=!0;var xe=Fu,cn=class{constructor(e=0,t=0,n=0,s=1){this.isQuaternion=!0,this._x=e,this._y=t,this._z=n,this._w=s}static slerpFlat(e,t,n,s,r,o,a){let c=n[s+0],l=n[s+1],h=n[s+2],d=n[s+3],u=r[o+0],f=r[o+1],p=r[o+2],_=r[o+3];if(d!==_||c!==u||l!==f||h!==p){let g=c*u+l*f+h*p+d*_;g<0&&(u=-u,f=-f,p=-p,_=-_,g=-g);let m=1-a;if(g<.9995){let v=Math.acos(g),M=Math.sin(v);m=Math.sin(m*v)/M,a=Math.sin(a*v)/M,c=c*m+u*a,l=l*m+f*a,h=h*m+p*a,d=d*m+_*a}else{c=c*m+u*a,l=l*m+f*a,h=h*m+p*a,d=d*m+_*a;let v=1/Math.sqrt(c*c+l*l+h*h+d*d);c*=v,l*=v,h*=v,d*=v}}e[t]=c,e[t+1]=l,e[t+2]=h,e[t+3]=d}static multiplyQuaternionsFlat(e,t,n,s,r,o){let a=n[s],c=n[s+1],l=n[s+2],h=n[s+3],d=r[o],u=r[o+1],f=r[o+2],p=r[o+3];return e[t]=a*p+h*d+c*f-l*u,e[t+1]=c*p+h*u+l*d-a*f,e[t+2]=l*p+h*f+a*u-c*d,e[t+3]=h*p-a*d-c*u-l*f,e}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get w(){return this._w}set w(e){this._w=e,this._onChangeCallback()}set(e,t,n,s){return this._x=e,this._y=t,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(e){return this._x=e.x,this._y=e.y,this._z=e.z,this._w=e.w,this._onChangeCallback(),this}setFromEuler(e,t=!0){let n=e._x,s=e._y,r=e._z,o=e._order,a=Math.cos,c=Math.sin,l=a(n/2),h=a(s/2),d=a(r/2),u=c(n/2),f=c(s/2),p=c(r/2);switch(o){case"XYZ":this._x=u*h*d+l*f*p,this._y=l*f*d-u*h*p,this._z=l*h*p+u*f*d,this._w=l*h*d-u*f*p;break;case"YXZ":this._x=u*h*d+l*f*p,this._y=l*f*d-u*h*p,this._z=l*h*p-u*f*d,this._w=l*h*d+u*f*p;break;case"ZXY":this._x=u*h*d-l*f*p,this._y=l*f*d+u*h*p,this._z=l*h*p+u*f*d,this._w=l*h*d-u*f*p;break;case"ZYX":this._x=u*h*d-l*f*p,this._y=l*f*d+u*h*p,this._z=l*h*p-u*f*d,this._w=l*h*d+u*f*p;break;case"YZX":this._x=u*h*d+l*f*p,this._y=l*f*d+u*h*p,this._z=l*h*p-u*f*d,this._w=l*h*d-u*f*p;break;case"XZY":this._x=u*h*d-l*f*p,this._y=l*f*d-u*h*p,this._z=l*h*p+u*f*d,this._w=l*h*d+u*f*p;break;default:We("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return t===!0&&this._onChangeCallback(),this}setFromAxisAngle(e,t){let n=t/2,s=Math.sin(n);return this._x=e.x*s,this._y=e.y*s,this._z=e.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(e){let t=e.elements,n=t[0],s=t[4],r=t[8],o=t[1],a=t[5],c=t[9],l=t[2],h=t[6],d=t[10],u=n+a+d;if(u>0){let f=.5/Math.sqrt(u+1);this._w=.25/f,this._x=(h-c)*f,this._y=(r-l)*f,this._z=(o-s)*f}else if(n>a&&n>d){let f=2*Math.sqrt(1+n-a-d);this._w=(h-c)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+l)/f}else if(a>d){let f=2*Math.sqrt(1+a-n-d);this._w=(r-l)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(c+h)/f}else{let f=2*Math.sqrt(1+d-n-a);this._w=(o-s)/f,this._x=(r+l)/f,this._y=(c+h)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(e,t){let n=e.dot(t)+1;return n<1e-8?(n=0,Math.abs(e.x)>Math.abs(e.z)?(this._x=-e.y,this._y=e.x,this._z=0,this._w=n):(this._x=0,this._y=-e.z,this._z=e.y,this._w=n)):(this._x=e.y*t.z-e.z*t.y,this._y=e.z*t.x-e.x*t.z,this._z=e.x*t.y-e.y*t.x,this._w=n),this.normalize()}angleTo(e){return 2*Math.acos(Math.abs(ot(this.dot(e),-1,1)))}rotateTowards(e,t){let n=this.angleTo(e);if(n===0)return this;let s=Math.min(1,t/n);return this.slerp(e,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(e){return this._x*e._x+this._y*e._y+this._z*e._z+this._w*e._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let e=this.length();return e===0?(this._x=0,this._y=0,this._z=0,this._w=1):(e=1/e,this._x=this._x*e,this._y=this._y*e,this._z=this._z*e,this._w=this._w*e),this._onChangeCallback(),this}multiply(e){return this.multiplyQuaternions(this,e)}premultiply(e){return this.multiplyQuaternions(e,this)}multiplyQuaternions(e,t){let n=e._x,s=e._y,r=e._z,o=e._w,a=t._x,c=t._y,l=t._z,h=t._w;return this._x=n*h+o*a+s*l-r*c,this._y=s*h+o*c+r*a-n*l,this._z=r*h+o*l+n*c-s*a,this._w=o*h-n*a-s*c-r*l,this._onChangeCallback(),this}slerp(e,t){let n=e._x,s=e._y,r=e._z,o=e._w,a=this.dot(e);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let c=1-t;if(a<.9995){let l=Math.acos(a),h=Math.sin(l);c=Math.sin(c*l)/h,t=Math.sin(t*l)/h,this._x=this._x*c+n*t,this._y=this._y*c+s*t,this._z=this._z*c+r*t,this._w=this._w*c+o*t,this._onChangeCallback()}else this._x=this._x*c+n*t,this._y=this._y*c+s*t,this._z=this._z*c+r*t,this._w=this._w*c+o*t,this.normalize();return this}slerpQuaternions(e,t,n){return this.copy(e).slerp(t,n)}random(){let e=2*Math.PI*Math.random(),t=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(e),s*Math.cos(e),r*Math.sin(t),r*Math.cos(t))}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._w===this._w}fromArray(e,t=0){return this._x=e[t],this._y=e[t+1],this._z=e[t+2],this._w=e[t+3],this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._w,e}fromBufferAttribute(e,t){return this._x=e.getX(t),this._y=e.getY(t),this._z=e.getZ(t),this._w=e.getW(t),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},Bu=class Bu{constructor(e=0,t=0,n=0){this.x=e,this.y=t,this.z=n}set(e,t,n){return n===void 0&&(n=this.z),this.x=e,this.y=t,this.z=n,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;default:throw new Error("THREE.Vector3: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this}multiplyVectors(e,t){return this.x=e.x*t.x,this.y=e.y*t.y,this.z=e.z*t.z,this}applyEuler(e){return this.applyQuaternion(Gf.setFromEuler(e))}applyAxisAngle(e,t){return this.applyQuaternion(Gf.setFromAxisAngle(e,t))}applyMatrix3(e){let t=this.x,n=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[3]*n+r[6]*s,this.y=r[1]*t+r[4]*n+r[7]*s,this.z=r[2]*t+r[5]*n+r[8]*s,this}applyNormalMatrix(e){return this.applyMatrix3(e).normalize()}applyMatrix4(e){let t=this.x,n=this.y,s=this.z,r=e.elements,o=1/(r[3]*t+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*t+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*t+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*t+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(e){let t=this.x,n=this.y,s=this.z,r=e.x,o=e.y,a=e.z,c=e.w,l=2*(o*s-a*n),h=2*(a*t-r*s),d=2*(r*n-o*t);return this.x=t+c*l+o*d-a*h,this.y=n+c*h+a*l-r*d,this.z=s+c*d+r*h-o*l,this}project(e){return this.applyMatrix4(e.matrixWorldInverse).applyMatrix4(e.projectionMatrix)}unproject(e){return this.applyMatrix4(e.projectionMatrixInverse).applyMatrix4(e.matrixWorld)}transformDirection(e){let t=this.x,n=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[4]*n+r[8]*s,this.y=r[1]*t+r[5]*n+r[9]*s,this.z=r[2]*t+r[6]*n+r[10]*s,this.normalize()}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this}divideScalar(e){return this.multiplyScalar(1/e)}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this}clamp(e,t){return this.x=ot(this.x,e.x,t.x),this.y=ot(this.y,e.y,t.y),this.z=ot(this.z,e.z,t.z),this}clampScalar(e,t){return this.x=ot(this.x,e,t),this.y=ot(this.y,e,t),this.z=ot(this.z,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(ot(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this.z=e.z+(t.z-e.z)*n,this}cross(e){return this.crossVectors(this,e)}crossVectors(e,t){let n=e.x,s=e.y,r=e.z,o=t.x,a=t.y,c=t.z;return this.x=s*c-r*a,this.y=r*o-n*c,this.z=n*a-s*o,this}projectOnVector(e){let t=e.lengthSq();if(t===0)return this.set(0,0,0);let n=e.dot(this)/t;return this.copy(e).multiplyScalar(n)}projectOnPlane(e){return uh.copy(this).projectOnVector(e),this.sub(uh)}reflect(e){return this.sub(uh.copy(e).multiplyScalar(2*this.dot(e)))}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let n=this.dot(e)/t;return Math.acos(ot(n,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,n=this.y-e.y,s=this.z-e.z;return t*t+n*n+s*s}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)+Math.abs(this.z-e.z)}setFromSpherical(e){return this.setFromSphericalCoords(e.radius,e.phi,e.theta)}setFromSphericalCoords(e,t,n){let s=Math.sin(t)*e;return this.x=s*Math.sin(n),this.y=Math.cos(t)*e,this.z=s*Math.cos(n),this}setFromCylindrical(e){return this.setFromCylindricalCoords(e.radius,e.theta,e.y)}setFromCylindricalCoords(e,t,n){return this.x=e*Math.sin(t),this.y=n,this.z=e*Math.cos(t),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this}setFromMatrixScale(e){let t=this.setFromMatrixColumn(e,0).length(),n=this.setFromMatrixColumn(e,1).length(),s=this.setFromMatrixColumn(e,2).length();return this.x=t,this.y=n,this.z=s,this}setFromMatrixColumn(e,t){return this.fromArray(e.elements,t*4)}setFromMatrix3Column(e,t){return this.fromArray(e.elements,t*3)}setFromEuler(e){return this.x=e._x,this.y=e._y,this.z=e._z,this}setFromColor(e){return this.x=e.r,this.y=e.g,this.z=e.b,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let e=Math.random()*Math.PI*2,t=Math.random()*2-1,n=Math.sqrt(1-t*t);return this.x=n*Math.cos(e),this.y=t,this.z=n*Math.sin(e),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}};Bu.prototype.isVector3=!0;var L=Bu,uh=new L,Gf=new cn,ku=class ku{constructor(e,t,n,s,r,o,a,c,l){this.elements=[1,0,0,0,1,0,0,0,1],e!==void 0&&this.set(e,t,n,s,r,o,a,c,l)}set(e,t,n,s,r,o,a,c,l){let h=this.elements;return h[0]=e,h[1]=s,h[2]=a,h[3]=t,h[4]=r,h[5]=c,h[6]=n,h[7]=o,h[8]=l,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(e){let t=this.elements,n=e.elements;return t[0]=n[0],t[1]=n[1],t[2]=n[2],t[3]=n[3],t[4]=n[4],t[5]=n[5],t[6]=n[6],t[7]=n[7],t[8]=n[8],this}extractBasis(e,t,n){return e.setFromMatrix3Column(this,0),t.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(e){let t=e.elements;return this.set(t[0],t[4],t[8],t[1],t[5],t[9],t[2],t[6],t[10]),this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let n=e.elements,s=t.elements,r=this.elements,o=n[0],a=n[3],c=n[6],l=n[1],h=n[4],d=n[7],u=n[2],f=n[5],p=n[8],_=s[0],g=s[3],m=s[6],v=s[1],M=s[4],b=s[7],S=s[2],T=s[5],y=s[8];return r[0]=o*_+a*v+c*S,r[3]=o*g+a*M+c*T,r[6]=o*m+a*b+c*y,r[1]=l*_+h*v+d*S,r[4]=l*g+h*M+d*T,r[7]=l*m+h*b+d*y,r[2]=u*_+f*v+p*S,r[5]=u*g+f*M+p*T,r[8]=u*m+f*b+p*y,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[3]*=e,t[6]*=e,t[1]*=e,t[4]*=e,t[7]*=e,t[2]*=e,t[5]*=e,t[8]*=e,this}determinant(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],o=e[4],a=e[5],c=e[6],l=e[7],h=e[8];return t*o*h-t*a*l-n*r*h+n*a*c+s*r*l-s*o*c}invert(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],o=e[4],a=e[5],c=e[6],l=e[7],h=e[8],d=h*o-a*l,u=a*c-h*r,f=l*r-o*c,p=t*d+n*u+s*f;if(p===0)return this.set(0,0,0,0,0,0,0,0,0);let _=1/p;return e[0]=d*_,e[1]=(s*l-h*n)*_,e[2]=(a*n-s*o)*_,e[3]=u*_,e[4]=(h*t-s*c)*_,e[5]=(s*r-a*t)*_,e[6]=f*_,e[7]=(n*c-l*t)*_,e[8]=(o*t-n*r)*_,this}transpose(){let e,t=this.elements;return e=t[1],t[1]=t[3],t[3]=e,e=t[2],t[2]=t[6],t[6]=e,e=t[5],t[5]=t[7],t[7]=e,this}getNormalMatrix(e){return this.setFromMatrix4(e).invert().transpose()}transposeIntoArray(e){let t=this.elements;return e[0]=t[0],e[1]=t[3],e[2]=t[6],e[3]=t[1],e[4]=t[4],e[5]=t[7],e[6]=t[2],e[7]=t[5],e[8]=t[8],this}setUvTransform(e,t,n,s,r,o,a){let c=Math.cos(r),l=Math.sin(r);return this.set(n*c,n*l,-n*(c*o+l*a)+o+e,-s*l,s*c,-s*(-l*o+c*a)+a+t,0,0,1),this}scale(e,t){return ws("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(dh.makeScale(e,t)),this}rotate(e){return ws("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(dh.makeRotation(-e)),this}translate(e,t){return ws("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(dh.makeTranslation(e,t)),this}makeTranslation(e,t){return e.isVector2?this.set(1,0,e.x,0,1,e.y,0,0,1):this.set(1,0,e,0,1,t,0,0,1),this}makeRotation(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,-n,0,n,t,0,0,0,1),this}makeScale(e,t){return this.set(e,0,0,0,t,0,0,0,1),this}equals(e){let t=this.elements,n=e.elements;for(let s=0;s<9;s++)if(t[s]!==n[s])return!1;return!0}fromArray(e,t=0){for(let n=0;n<9;n++)this.elements[n]=e[n+t];return this}toArray(e=[],t=0){let n=this.elements;return e[t]=n[0],e[t+1]=n[1],e[t+2]=n[2],e[t+3]=n[3],e[t+4]=n[4],e[t+5]=n[5],e[t+6]=n[6],e[t+7]=n[7],e[t+8]=n[8],e}clone(){return new this.constructor().fromArray(this.elements)}};ku.prototype.isMatrix3=!0;var tt=ku,dh=new tt,Vf=new tt().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),Wf=new tt().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function __(){let i={enabled:!0,workingColorSpace:_n,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===vt&&(s.r=Ai(s.r),s.g=Ai(s.g),s.b=Ai(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===vt&&(s.r=dr(s.r),s.g=dr(s.g),s.b=dr(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===ki?_o:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},e=[.64,.33,.3,.6,.15,.06],t=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[_n]:{primaries:e,whitePoint:n,transfer:_o,toXYZ:Vf,fromXYZ:Wf,luminanceCoefficients:t,workingColorSpaceConfig:{unpackColorSpace:Ct},outputColorSpaceConfig:{drawingBufferColorSpace:Ct}},[Ct]:{primaries:e,whitePoint:n,transfer:vt,toXYZ:Vf,fromXYZ:Wf,luminanceCoefficients:t,outputColorSpaceConfig:{drawingBufferColorSpace:Ct}}}),i}var ht=__();function Ai(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function dr(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Zs,pl=class{static getDataURL(e,t="image/png"){if(/^data:/i.test(e.src)||typeof HTMLCanvasElement>"u")return e.src;let n;if(e instanceof HTMLCanvasElement)n=e;else{Zs===void 0&&(Zs=gr("canvas")),Zs.width=e.width,Zs.height=e.height;let s=Zs.getContext("2d");e instanceof ImageData?s.putImageData(e,0,0):s.drawImage(e,0,0,e.width,e.height),n=Zs}return n.toDataURL(t)}static sRGBToLinear(e){if(typeof HTMLImageElement<"u"&&e instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&e instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&e instanceof ImageBitmap){let t=gr("canvas");t.width=e.width,t.height=e.height;let n=t.getContext("2d");n.drawImage(e,0,0,e.width,e.height);let s=n.getImageData(0,0,e.width,e.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=Ai(r[o]/255)*255;return n.putImageData(s,0,0),t}else if(e.data){let t=e.data.slice(0);for(let n=0;n<t.length;n++)t instanceof Uint8Array||t instanceof Uint8ClampedArray?t[n]=Math.floor(Ai(t[n]/255)*255):t[n]=Ai(t[n]);return{data:t,width:e.width,height:e.height}}else return We("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),e}},x_=0,xr=class{constructor(e=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:x_++}),this.uuid=ri(),this.data=e,this.dataReady=!0,this.version=0}getSize(e){let t=this.data;return typeof HTMLVideoElement<"u"&&t instanceof HTMLVideoElement?e.set(t.videoWidth,t.videoHeight,0):typeof VideoFrame<"u"&&t instanceof VideoFrame?e.set(t.displayWidth,t.displayHeight,0):t!==null?e.set(t.width||0,t.height||0,t.depth||0):e.set(0,0,0),e}set needsUpdate(e){e===!0&&this.version++}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.images[this.uuid]!==void 0)return e.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(fh(s[o].image)):r.push(fh(s[o]))}else r=fh(s);n.url=r}return t||(e.images[this.uuid]=n),n}};function fh(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?pl.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(We("Texture: Unable to serialize Texture."),{})}var y_=0,ph=new L,Wt=class i extends ti{constructor(e=i.DEFAULT_IMAGE,t=i.DEFAULT_MAPPING,n=Hn,s=Hn,r=Vt,o=Wn,a=$n,c=Rn,l=i.DEFAULT_ANISOTROPY,h=ki){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:y_++}),this.uuid=ri(),this.name="",this.source=new xr(e),this.mipmaps=[],this.mapping=t,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=l,this.format=a,this.internalFormat=null,this.type=c,this.offset=new xe(0,0),this.repeat=new xe(1,1),this.center=new xe(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new tt,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(e&&e.depth&&e.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(ph).x}get height(){return this.source.getSize(ph).y}get depth(){return this.source.getSize(ph).z}get image(){return this.source.data}set image(e){this.source.data=e}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(e){return this.name=e.name,this.source=e.source,this.mipmaps=e.mipmaps.slice(0),this.mapping=e.mapping,this.channel=e.channel,this.wrapS=e.wrapS,this.wrapT=e.wrapT,this.magFilter=e.magFilter,this.minFilter=e.minFilter,this.anisotropy=e.anisotropy,this.format=e.format,this.internalFormat=e.internalFormat,this.type=e.type,this.normalized=e.normalized,this.offset.copy(e.offset),this.repeat.copy(e.repeat),this.center.copy(e.center),this.rotation=e.rotation,this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrix.copy(e.matrix),this.generateMipmaps=e.generateMipmaps,this.mipmapsAutoUpdate=e.mipmapsAutoUpdate,this.premultiplyAlpha=e.premultiplyAlpha,this.flipY=e.flipY,this.unpackAlignment=e.unpackAlignment,this.colorSpace=e.colorSpace,this.renderTarget=e.renderTarget,this.isRenderTargetTexture=e.isRenderTargetTexture,this.isPMREMTexture=e.isPMREMTexture,this.isArrayTexture=e.isArrayTexture,this.userData=JSON.parse(JSON.stringify(e.userData)),this.needsUpdate=!0,this}setValues(e){for(let t in e){let n=e[t];if(n===void 0){We(`Texture.setValues(): parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){We(`Texture.setValues(): property '${t}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[t]=n}}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.textures[this.uuid]!==void 0)return e.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(e).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),t||(e.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(e){if(this.mapping!==mu)return e;if(e.applyMatrix3(this.matrix),e.x<0||e.x>1)switch(this.wrapS){case Ji:e.x=e.x-Math.floor(e.x);break;case Hn:e.x=e.x<0?0:1;break;case pr:Math.abs(Math.floor(e.x)%2)===1?e.x=Math.ceil(e.x)-e.x:e.x=e.x-Math.floor(e.x);break}if(e.y<0||e.y>1)switch(this.wrapT){case Ji:e.y=e.y-Math.floor(e.y);break;case Hn:e.y=e.y<0?0:1;break;case pr:Math.abs(Math.floor(e.y)%2)===1?e.y=Math.ceil(e.y)-e.y:e.y=e.y-Math.floor(e.y);break}return this.flipY&&(e.y=1-e.y),e}set needsUpdate(e){e===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(e){e===!0&&this.pmremVersion++}};Wt.DEFAULT_IMAGE=null;Wt.DEFAULT_MAPPING=mu;Wt.DEFAULT_ANISOTROPY=1;var zu=class zu{constructor(e=0,t=0,n=0,s=1){this.x=e,this.y=t,this.z=n,this.w=s}get width(){return this.z}set width(e){this.z=e}get height(){return this.w}set height(e){this.w=e}set(e,t,n,s){return this.x=e,this.y=t,this.z=n,this.w=s,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this.w=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setW(e){return this.w=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;case 3:this.w=t;break;default:throw new Error("THREE.Vector4: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this.w=e.w!==void 0?e.w:1,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this.w+=e.w,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this.w+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this.w=e.w+t.w,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this.w+=e.w*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this.w-=e.w,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this.w-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this.w=e.w-t.w,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this.w*=e.w,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this.w*=e,this}applyMatrix4(e){let t=this.x,n=this.y,s=this.z,r=this.w,o=e.elements;return this.x=o[0]*t+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*t+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*t+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*t+o[7]*n+o[11]*s+o[15]*r,this}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this.w/=e.w,this}divideScalar(e){return this.multiplyScalar(1/e)}setAxisAngleFromQuaternion(e){this.w=2*Math.acos(e.w);let t=Math.sqrt(1-e.w*e.w);return t<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=e.x/t,this.y=e.y/t,this.z=e.z/t),this}setAxisAngleFromRotationMatrix(e){let t,n,s,r,c=e.elements,l=c[0],h=c[4],d=c[8],u=c[1],f=c[5],p=c[9],_=c[2],g=c[6],m=c[10];if(Math.abs(h-u)<.01&&Math.abs(d-_)<.01&&Math.abs(p-g)<.01){if(Math.abs(h+u)<.1&&Math.abs(d+_)<.1&&Math.abs(p+g)<.1&&Math.abs(l+f+m-3)<.1)return this.set(1,0,0,0),this;t=Math.PI;let M=(l+1)/2,b=(f+1)/2,S=(m+1)/2,T=(h+u)/4,y=(d+_)/4,w=(p+g)/4;return M>b&&M>S?M<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(M),s=T/n,r=y/n):b>S?b<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(b),n=T/s,r=w/s):S<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(S),n=y/r,s=w/r),this.set(n,s,r,t),this}let v=Math.sqrt((g-p)*(g-p)+(d-_)*(d-_)+(u-h)*(u-h));return Math.abs(v)<.001&&(v=1),this.x=(g-p)/v,this.y=(d-_)/v,this.z=(u-h)/v,this.w=Math.acos((l+f+m-1)/2),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this.w=t[15],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this.w=Math.min(this.w,e.w),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this.w=Math.max(this.w,e.w),this}clamp(e,t){return this.x=ot(this.x,e.x,t.x),this.y=ot(this.y,e.y,t.y),this.z=ot(this.z,e.z,t.z),this.w=ot(this.w,e.w,t.w),this}clampScalar(e,t){return this.x=ot(this.x,e,t),this.y=ot(this.y,e,t),this.z=ot(this.z,e,t),this.w=ot(this.w,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(ot(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z+this.w*e.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this.w+=(e.w-this.w)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this.z=e.z+(t.z-e.z)*n,this.w=e.w+(t.w-e.w)*n,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z&&e.w===this.w}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this.w=e[t+3],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e[t+3]=this.w,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this.w=e.getW(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}};zu.prototype.isVector4=!0;var bt=zu,ml=class extends ti{constructor(e=1,t=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Vt,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=e,this.height=t,this.depth=n.depth,this.scissor=new bt(0,0,e,t),this.scissorTest=!1,this.viewport=new bt(0,0,e,t),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Wt({width:e,height:t,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(e={}){let t={minFilter:Vt,generateMipmaps:!1,flipY:!1,internalFormat:null};e.mapping!==void 0&&(t.mapping=e.mapping),e.wrapS!==void 0&&(t.wrapS=e.wrapS),e.wrapT!==void 0&&(t.wrapT=e.wrapT),e.wrapR!==void 0&&(t.wrapR=e.wrapR),e.magFilter!==void 0&&(t.magFilter=e.magFilter),e.minFilter!==void 0&&(t.minFilter=e.minFilter),e.format!==void 0&&(t.format=e.format),e.type!==void 0&&(t.type=e.type),e.anisotropy!==void 0&&(t.anisotropy=e.anisotropy),e.colorSpace!==void 0&&(t.colorSpace=e.colorSpace),e.flipY!==void 0&&(t.flipY=e.flipY),e.generateMipmaps!==void 0&&(t.generateMipmaps=e.generateMipmaps),e.mipmapsAutoUpdate!==void 0&&(t.mipmapsAutoUpdate=e.mipmapsAutoUpdate),e.internalFormat!==void 0&&(t.internalFormat=e.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(t)}get texture(){return this.textures[0]}set texture(e){this.textures[0]=e}set depthTexture(e){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),e!==null&&e.renderTarget===null&&(e.renderTarget=this),this._depthTexture=e}get depthTexture(){return this._depthTexture}setSize(e,t,n=1){if(this.width!==e||this.height!==t||this.depth!==n){this.width=e,this.height=t,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=e,this.textures[s].image.height=t,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,e,t),this.scissor.set(0,0,e,t)}clone(){return new this.constructor().copy(this)}copy(e){this.width=e.width,this.height=e.height,this.depth=e.depth,this.scissor.copy(e.scissor),this.scissorTest=e.scissorTest,this.viewport.copy(e.viewport),this.textures.length=0;for(let t=0,n=e.textures.length;t<n;t++){this.textures[t]=e.textures[t].clone(),this.textures[t].isRenderTargetTexture=!0,this.textures[t].renderTarget=this;let s=Object.assign({},e.textures[t].image);this.textures[t].source=new xr(s)}if(this.depthBuffer=e.depthBuffer,this.stencilBuffer=e.stencilBuffer,this.resolveColorBuffer=e.resolveColorBuffer,this.resolveDepthBuffer=e.resolveDepthBuffer,this.resolveStencilBuffer=e.resolveStencilBuffer,this.storeMultisampledColorBuffer=e.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=e.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=e.storeMultisampledStencilBuffer,e.depthTexture!==null)if(e.depthTexture.renderTarget===e){let t=e.depthTexture.clone();t.renderTarget=null,this.depthTexture=t}else this.depthTexture=e.depthTexture;else this.depthTexture=null;return this.samples=e.samples,this.multiview=e.multiview,this.useArrayDepthTexture=e.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},Un=class extends ml{constructor(e=1,t=1,n={}){super(e,t,n),this.isWebGLRenderTarget=!0}},yo=class extends Wt{constructor(e=null,t=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:e,width:t,height:n,depth:s},this.magFilter=Dt,this.minFilter=Dt,this.wrapR=Hn,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}addLayerUpdate(e){this.layerUpdates.add(e)}clearLayerUpdates(){this.layerUpdates.clear()}};var gl=class extends Wt{constructor(e=null,t=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:e,width:t,height:n,depth:s},this.magFilter=Dt,this.minFilter=Dt,this.wrapR=Hn,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}};var Fl=class Fl{constructor(e,t,n,s,r,o,a,c,l,h,d,u,f,p,_,g){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],e!==void 0&&this.set(e,t,n,s,r,o,a,c,l,h,d,u,f,p,_,g)}set(e,t,n,s,r,o,a,c,l,h,d,u,f,p,_,g){let m=this.elements;return m[0]=e,m[4]=t,m[8]=n,m[12]=s,m[1]=r,m[5]=o,m[9]=a,m[13]=c,m[2]=l,m[6]=h,m[10]=d,m[14]=u,m[3]=f,m[7]=p,m[11]=_,m[15]=g,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new Fl().fromArray(this.elements)}copy(e){let t=this.elements,n=e.elements;return t[0]=n[0],t[1]=n[1],t[2]=n[2],t[3]=n[3],t[4]=n[4],t[5]=n[5],t[6]=n[6],t[7]=n[7],t[8]=n[8],t[9]=n[9],t[10]=n[10],t[11]=n[11],t[12]=n[12],t[13]=n[13],t[14]=n[14],t[15]=n[15],this}copyPosition(e){let t=this.elements,n=e.elements;return t[12]=n[12],t[13]=n[13],t[14]=n[14],this}setFromMatrix3(e){let t=e.elements;return this.set(t[0],t[3],t[6],0,t[1],t[4],t[7],0,t[2],t[5],t[8],0,0,0,0,1),this}extractBasis(e,t,n){return this.determinantAffine()===0?(e.set(1,0,0),t.set(0,1,0),n.set(0,0,1),this):(e.setFromMatrixColumn(this,0),t.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(e,t,n){return this.set(e.x,t.x,n.x,0,e.y,t.y,n.y,0,e.z,t.z,n.z,0,0,0,0,1),this}extractRotation(e){if(e.determinantAffine()===0)return this.identity();let t=this.elements,n=e.elements,s=1/Js.setFromMatrixColumn(e,0).length(),r=1/Js.setFromMatrixColumn(e,1).length(),o=1/Js.setFromMatrixColumn(e,2).length();return t[0]=n[0]*s,t[1]=n[1]*s,t[2]=n[2]*s,t[3]=0,t[4]=n[4]*r,t[5]=n[5]*r,t[6]=n[6]*r,t[7]=0,t[8]=n[8]*o,t[9]=n[9]*o,t[10]=n[10]*o,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromEuler(e){let t=this.elements,n=e.x,s=e.y,r=e.z,o=Math.cos(n),a=Math.sin(n),c=Math.cos(s),l=Math.sin(s),h=Math.cos(r),d=Math.sin(r);if(e.order==="XYZ"){let u=o*h,f=o*d,p=a*h,_=a*d;t[0]=c*h,t[4]=-c*d,t[8]=l,t[1]=f+p*l,t[5]=u-_*l,t[9]=-a*c,t[2]=_-u*l,t[6]=p+f*l,t[10]=o*c}else if(e.order==="YXZ"){let u=c*h,f=c*d,p=l*h,_=l*d;t[0]=u+_*a,t[4]=p*a-f,t[8]=o*l,t[1]=o*d,t[5]=o*h,t[9]=-a,t[2]=f*a-p,t[6]=_+u*a,t[10]=o*c}else if(e.order==="ZXY"){let u=c*h,f=c*d,p=l*h,_=l*d;t[0]=u-_*a,t[4]=-o*d,t[8]=p+f*a,t[1]=f+p*a,t[5]=o*h,t[9]=_-u*a,t[2]=-o*l,t[6]=a,t[10]=o*c}else if(e.order==="ZYX"){let u=o*h,f=o*d,p=a*h,_=a*d;t[0]=c*h,t[4]=p*l-f,t[8]=u*l+_,t[1]=c*d,t[5]=_*l+u,t[9]=f*l-p,t[2]=-l,t[6]=a*c,t[10]=o*c}else if(e.order==="YZX"){let u=o*c,f=o*l,p=a*c,_=a*l;t[0]=c*h,t[4]=_-u*d,t[8]=p*d+f,t[1]=d,t[5]=o*h,t[9]=-a*h,t[2]=-l*h,t[6]=f*d+p,t[10]=u-_*d}else if(e.order==="XZY"){let u=o*c,f=o*l,p=a*c,_=a*l;t[0]=c*h,t[4]=-d,t[8]=l*h,t[1]=u*d+_,t[5]=o*h,t[9]=f*d-p,t[2]=p*d-f,t[6]=a*h,t[10]=_*d+u}return t[3]=0,t[7]=0,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromQuaternion(e){return this.compose(v_,e,b_)}lookAt(e,t,n){let s=this.elements;return Nn.subVectors(e,t),Nn.lengthSq()===0&&(Nn.z=1),Nn.normalize(),Xi.crossVectors(n,Nn),Xi.lengthSq()===0&&(Math.abs(n.z)===1?Nn.x+=1e-4:Nn.z+=1e-4,Nn.normalize(),Xi.crossVectors(n,Nn)),Xi.normalize(),Ca.crossVectors(Nn,Xi),s[0]=Xi.x,s[4]=Ca.x,s[8]=Nn.x,s[1]=Xi.y,s[5]=Ca.y,s[9]=Nn.y,s[2]=Xi.z,s[6]=Ca.z,s[10]=Nn.z,this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let n=e.elements,s=t.elements,r=this.elements,o=n[0],a=n[4],c=n[8],l=n[12],h=n[1],d=n[5],u=n[9],f=n[13],p=n[2],_=n[6],g=n[10],m=n[14],v=n[3],M=n[7],b=n[11],S=n[15],T=s[0],y=s[4],w=s[8],F=s[12],I=s[1],D=s[5],$=s[9],J=s[13],P=s[2],k=s[6],re=s[10],Y=s[14],me=s[3],se=s[7],ce=s[11],ue=s[15];return r[0]=o*T+a*I+c*P+l*me,r[4]=o*y+a*D+c*k+l*se,r[8]=o*w+a*$+c*re+l*ce,r[12]=o*F+a*J+c*Y+l*ue,r[1]=h*T+d*I+u*P+f*me,r[5]=h*y+d*D+u*k+f*se,r[9]=h*w+d*$+u*re+f*ce,r[13]=h*F+d*J+u*Y+f*ue,r[2]=p*T+_*I+g*P+m*me,r[6]=p*y+_*D+g*k+m*se,r[10]=p*w+_*$+g*re+m*ce,r[14]=p*F+_*J+g*Y+m*ue,r[3]=v*T+M*I+b*P+S*me,r[7]=v*y+M*D+b*k+S*se,r[11]=v*w+M*$+b*re+S*ce,r[15]=v*F+M*J+b*Y+S*ue,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[4]*=e,t[8]*=e,t[12]*=e,t[1]*=e,t[5]*=e,t[9]*=e,t[13]*=e,t[2]*=e,t[6]*=e,t[10]*=e,t[14]*=e,t[3]*=e,t[7]*=e,t[11]*=e,t[15]*=e,this}determinant(){let e=this.elements,t=e[0],n=e[4],s=e[8],r=e[12],o=e[1],a=e[5],c=e[9],l=e[13],h=e[2],d=e[6],u=e[10],f=e[14],p=e[3],_=e[7],g=e[11],m=e[15],v=c*f-l*u,M=a*f-l*d,b=a*u-c*d,S=o*f-l*h,T=o*u-c*h,y=o*d-a*h;return t*(_*v-g*M+m*b)-n*(p*v-g*S+m*T)+s*(p*M-_*S+m*y)-r*(p*b-_*T+g*y)}determinantAffine(){let e=this.elements,t=e[0],n=e[4],s=e[8],r=e[1],o=e[5],a=e[9],c=e[2],l=e[6],h=e[10];return t*(o*h-a*l)-n*(r*h-a*c)+s*(r*l-o*c)}transpose(){let e=this.elements,t;return t=e[1],e[1]=e[4],e[4]=t,t=e[2],e[2]=e[8],e[8]=t,t=e[6],e[6]=e[9],e[9]=t,t=e[3],e[3]=e[12],e[12]=t,t=e[7],e[7]=e[13],e[13]=t,t=e[11],e[11]=e[14],e[14]=t,this}setPosition(e,t,n){let s=this.elements;return e.isVector3?(s[12]=e.x,s[13]=e.y,s[14]=e.z):(s[12]=e,s[13]=t,s[14]=n),this}invert(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],o=e[4],a=e[5],c=e[6],l=e[7],h=e[8],d=e[9],u=e[10],f=e[11],p=e[12],_=e[13],g=e[14],m=e[15],v=t*a-n*o,M=t*c-s*o,b=t*l-r*o,S=n*c-s*a,T=n*l-r*a,y=s*l-r*c,w=h*_-d*p,F=h*g-u*p,I=h*m-f*p,D=d*g-u*_,$=d*m-f*_,J=u*m-f*g,P=v*J-M*$+b*D+S*I-T*F+y*w;if(P===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let k=1/P;return e[0]=(a*J-c*$+l*D)*k,e[1]=(s*$-n*J-r*D)*k,e[2]=(_*y-g*T+m*S)*k,e[3]=(u*T-d*y-f*S)*k,e[4]=(c*I-o*J-l*F)*k,e[5]=(t*J-s*I+r*F)*k,e[6]=(g*b-p*y-m*M)*k,e[7]=(h*y-u*b+f*M)*k,e[8]=(o*$-a*I+l*w)*k,e[9]=(n*I-t*$-r*w)*k,e[10]=(p*T-_*b+m*v)*k,e[11]=(d*b-h*T-f*v)*k,e[12]=(a*F-o*D-c*w)*k,e[13]=(t*D-n*F+s*w)*k,e[14]=(_*M-p*S-g*v)*k,e[15]=(h*S-d*M+u*v)*k,this}scale(e){let t=this.elements,n=e.x,s=e.y,r=e.z;return t[0]*=n,t[4]*=s,t[8]*=r,t[1]*=n,t[5]*=s,t[9]*=r,t[2]*=n,t[6]*=s,t[10]*=r,t[3]*=n,t[7]*=s,t[11]*=r,this}getMaxScaleOnAxis(){let e=this.elements,t=e[0]*e[0]+e[1]*e[1]+e[2]*e[2],n=e[4]*e[4]+e[5]*e[5]+e[6]*e[6],s=e[8]*e[8]+e[9]*e[9]+e[10]*e[10];return Math.sqrt(Math.max(t,n,s))}makeTranslation(e,t,n){return e.isVector3?this.set(1,0,0,e.x,0,1,0,e.y,0,0,1,e.z,0,0,0,1):this.set(1,0,0,e,0,1,0,t,0,0,1,n,0,0,0,1),this}makeRotationX(e){let t=Math.cos(e),n=Math.sin(e);return this.set(1,0,0,0,0,t,-n,0,0,n,t,0,0,0,0,1),this}makeRotationY(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,0,n,0,0,1,0,0,-n,0,t,0,0,0,0,1),this}makeRotationZ(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,-n,0,0,n,t,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(e,t){let n=Math.cos(t),s=Math.sin(t),r=1-n,o=e.x,a=e.y,c=e.z,l=r*o,h=r*a;return this.set(l*o+n,l*a-s*c,l*c+s*a,0,l*a+s*c,h*a+n,h*c-s*o,0,l*c-s*a,h*c+s*o,r*c*c+n,0,0,0,0,1),this}makeScale(e,t,n){return this.set(e,0,0,0,0,t,0,0,0,0,n,0,0,0,0,1),this}makeShear(e,t,n,s,r,o){return this.set(1,n,r,0,e,1,o,0,t,s,1,0,0,0,0,1),this}compose(e,t,n){let s=this.elements,r=t._x,o=t._y,a=t._z,c=t._w,l=r+r,h=o+o,d=a+a,u=r*l,f=r*h,p=r*d,_=o*h,g=o*d,m=a*d,v=c*l,M=c*h,b=c*d,S=n.x,T=n.y,y=n.z;return s[0]=(1-(_+m))*S,s[1]=(f+b)*S,s[2]=(p-M)*S,s[3]=0,s[4]=(f-b)*T,s[5]=(1-(u+m))*T,s[6]=(g+v)*T,s[7]=0,s[8]=(p+M)*y,s[9]=(g-v)*y,s[10]=(1-(u+_))*y,s[11]=0,s[12]=e.x,s[13]=e.y,s[14]=e.z,s[15]=1,this}decompose(e,t,n){let s=this.elements;e.x=s[12],e.y=s[13],e.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),t.identity(),this;let o=Js.set(s[0],s[1],s[2]).length(),a=Js.set(s[4],s[5],s[6]).length(),c=Js.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Jn.copy(this);let l=1/o,h=1/a,d=1/c;return Jn.elements[0]*=l,Jn.elements[1]*=l,Jn.elements[2]*=l,Jn.elements[4]*=h,Jn.elements[5]*=h,Jn.elements[6]*=h,Jn.elements[8]*=d,Jn.elements[9]*=d,Jn.elements[10]*=d,t.setFromRotationMatrix(Jn),n.x=o,n.y=a,n.z=c,this}makePerspective(e,t,n,s,r,o,a=Gn,c=!1){let l=this.elements,h=2*r/(t-e),d=2*r/(n-s),u=(t+e)/(t-e),f=(n+s)/(n-s),p,_;if(c)p=r/(o-r),_=o*r/(o-r);else if(a===Gn)p=-(o+r)/(o-r),_=-2*o*r/(o-r);else if(a===mr)p=-o/(o-r),_=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return l[0]=h,l[4]=0,l[8]=u,l[12]=0,l[1]=0,l[5]=d,l[9]=f,l[13]=0,l[2]=0,l[6]=0,l[10]=p,l[14]=_,l[3]=0,l[7]=0,l[11]=-1,l[15]=0,this}makeOrthographic(e,t,n,s,r,o,a=Gn,c=!1){let l=this.elements,h=2/(t-e),d=2/(n-s),u=-(t+e)/(t-e),f=-(n+s)/(n-s),p,_;if(c)p=1/(o-r),_=o/(o-r);else if(a===Gn)p=-2/(o-r),_=-(o+r)/(o-r);else if(a===mr)p=-1/(o-r),_=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return l[0]=h,l[4]=0,l[8]=0,l[12]=u,l[1]=0,l[5]=d,l[9]=0,l[13]=f,l[2]=0,l[6]=0,l[10]=p,l[14]=_,l[3]=0,l[7]=0,l[11]=0,l[15]=1,this}equals(e){let t=this.elements,n=e.elements;for(let s=0;s<16;s++)if(t[s]!==n[s])return!1;return!0}fromArray(e,t=0){for(let n=0;n<16;n++)this.elements[n]=e[n+t];return this}toArray(e=[],t=0){let n=this.elements;return e[t]=n[0],e[t+1]=n[1],e[t+2]=n[2],e[t+3]=n[3],e[t+4]=n[4],e[t+5]=n[5],e[t+6]=n[6],e[t+7]=n[7],e[t+8]=n[8],e[t+9]=n[9],e[t+10]=n[10],e[t+11]=n[11],e[t+12]=n[12],e[t+13]=n[13],e[t+14]=n[14],e[t+15]=n[15],e}};Fl.prototype.isMatrix4=!0;var je=Fl,Js=new L,Jn=new je,v_=new L(0,0,0),b_=new L(1,1,1),Xi=new L,Ca=new L,Nn=new L,$f=new je,Xf=new cn,ni=class i{constructor(e=0,t=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=e,this._y=t,this._z=n,this._order=s}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get order(){return this._order}set order(e){this._order=e,this._onChangeCallback()}set(e,t,n,s=this._order){return this._x=e,this._y=t,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(e){return this._x=e._x,this._y=e._y,this._z=e._z,this._order=e._order,this._onChangeCallback(),this}setFromRotationMatrix(e,t=this._order,n=!0){let s=e.elements,r=s[0],o=s[4],a=s[8],c=s[1],l=s[5],h=s[9],d=s[2],u=s[6],f=s[10];switch(t){case"XYZ":this._y=Math.asin(ot(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-h,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(u,l),this._z=0);break;case"YXZ":this._x=Math.asin(-ot(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(c,l)):(this._y=Math.atan2(-d,r),this._z=0);break;case"ZXY":this._x=Math.asin(ot(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(-d,f),this._z=Math.atan2(-o,l)):(this._y=0,this._z=Math.atan2(c,r));break;case"ZYX":this._y=Math.asin(-ot(d,-1,1)),Math.abs(d)<.9999999?(this._x=Math.atan2(u,f),this._z=Math.atan2(c,r)):(this._x=0,this._z=Math.atan2(-o,l));break;case"YZX":this._z=Math.asin(ot(c,-1,1)),Math.abs(c)<.9999999?(this._x=Math.atan2(-h,l),this._y=Math.atan2(-d,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-ot(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(u,l),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-h,f),this._y=0);break;default:We("Euler: .setFromRotationMatrix() encountered an unknown order: "+t)}return this._order=t,n===!0&&this._onChangeCallback(),this}setFromQuaternion(e,t,n){return $f.makeRotationFromQuaternion(e),this.setFromRotationMatrix($f,t,n)}setFromVector3(e,t=this._order){return this.set(e.x,e.y,e.z,t)}reorder(e){return Xf.setFromEuler(this),this.setFromQuaternion(Xf,e)}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._order===this._order}fromArray(e){return this._x=e[0],this._y=e[1],this._z=e[2],e[3]!==void 0&&(this._order=e[3]),this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._order,e}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ni.DEFAULT_ORDER="XYZ";var yr=class{constructor(){this.mask=1}set(e){this.mask=(1<<e|0)>>>0}enable(e){this.mask|=1<<e|0}enableAll(){this.mask=-1}toggle(e){this.mask^=1<<e|0}disable(e){this.mask&=~(1<<e|0)}disableAll(){this.mask=0}test(e){return(this.mask&e.mask)!==0}isEnabled(e){return(this.mask&(1<<e|0))!==0}},M_=0,qf=new L,Qs=new cn,vi=new je,Ia=new L,io=new L,S_=new L,w_=new cn,Yf=new L(1,0,0),jf=new L(0,1,0),Kf=new L(0,0,1),Zf={type:"added"},T_={type:"removed"},er={type:"childadded",child:null},mh={type:"childremoved",child:null},At=class i extends ti{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:M_++}),this.uuid=ri(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let e=new L,t=new ni,n=new cn,s=new L(1,1,1);function r(){n.setFromEuler(t,!1)}function o(){t.setFromQuaternion(n,void 0,!1)}t._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:e},rotation:{configurable:!0,enumerable:!0,value:t},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new je},normalMatrix:{value:new tt}}),this.matrix=new je,this.matrixWorld=new je,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new yr,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(e){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(e),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(e){return this.quaternion.premultiply(e),this}setRotationFromAxisAngle(e,t){this.quaternion.setFromAxisAngle(e,t)}setRotationFromEuler(e){this.quaternion.setFromEuler(e,!0)}setRotationFromMatrix(e){this.quaternion.setFromRotationMatrix(e)}setRotationFromQuaternion(e){this.quaternion.copy(e)}rotateOnAxis(e,t){return Qs.setFromAxisAngle(e,t),this.quaternion.multiply(Qs),this}rotateOnWorldAxis(e,t){return Qs.setFromAxisAngle(e,t),this.quaternion.premultiply(Qs),this}rotateX(e){return this.rotateOnAxis(Yf,e)}rotateY(e){return this.rotateOnAxis(jf,e)}rotateZ(e){return this.rotateOnAxis(Kf,e)}translateOnAxis(e,t){return qf.copy(e).applyQuaternion(this.quaternion),this.position.add(qf.multiplyScalar(t)),this}translateX(e){return this.translateOnAxis(Yf,e)}translateY(e){return this.translateOnAxis(jf,e)}translateZ(e){return this.translateOnAxis(Kf,e)}localToWorld(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(this.matrixWorld)}worldToLocal(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(vi.copy(this.matrixWorld).invert())}lookAt(e,t,n){e.isVector3?Ia.copy(e):Ia.set(e,t,n);let s=this.parent;this.updateWorldMatrix(!0,!1),io.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?vi.lookAt(io,Ia,this.up):vi.lookAt(Ia,io,this.up),this.quaternion.setFromRotationMatrix(vi),s&&(vi.extractRotation(s.matrixWorld),Qs.setFromRotationMatrix(vi),this.quaternion.premultiply(Qs.invert()))}add(e){if(arguments.length>1){for(let t=0;t<arguments.length;t++)this.add(arguments[t]);return this}return e===this?(Je("Object3D.add: object can't be added as a child of itself.",e),this):(e&&e.isObject3D?(e.removeFromParent(),e.parent=this,this.children.push(e),e.dispatchEvent(Zf),er.child=e,this.dispatchEvent(er),er.child=null):Je("Object3D.add: object not an instance of THREE.Object3D.",e),this)}remove(e){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let t=this.children.indexOf(e);return t!==-1&&(e.parent=null,this.children.splice(t,1),e.dispatchEvent(T_),mh.child=e,this.dispatchEvent(mh),mh.child=null),this}removeFromParent(){let e=this.parent;return e!==null&&e.remove(this),this}clear(){return this.remove(...this.children)}attach(e){return this.updateWorldMatrix(!0,!1),vi.copy(this.matrixWorld).invert(),e.parent!==null&&(e.parent.updateWorldMatrix(!0,!1),vi.multiply(e.parent.matrixWorld)),e.applyMatrix4(vi),e.removeFromParent(),e.parent=this,this.children.push(e),e.updateWorldMatrix(!1,!0),e.dispatchEvent(Zf),er.child=e,this.dispatchEvent(er),er.child=null,this}getObjectById(e){return this.getObjectByProperty("id",e)}getObjectByName(e){return this.getObjectByProperty("name",e)}getObjectByProperty(e,t){if(this[e]===t)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(e,t);if(o!==void 0)return o}}getObjectsByProperty(e,t,n=[]){this[e]===t&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(e,t,n);return n}getWorldPosition(e){return this.updateWorldMatrix(!0,!1),e.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(io,e,S_),e}getWorldScale(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(io,w_,e),e}getWorldDirection(e){this.updateWorldMatrix(!0,!1);let t=this.matrixWorld.elements;return e.set(t[8],t[9],t[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(e){e(this);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].traverse(e)}traverseVisible(e){if(this.visible===!1)return;e(this);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].traverseVisible(e)}traverseAncestors(e){let t=this.parent;t!==null&&(e(t),t.traverseAncestors(e))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let e=this.pivot;if(e!==null){let t=e.x,n=e.y,s=e.z,r=this.matrix.elements;r[12]+=t-r[0]*t-r[4]*n-r[8]*s,r[13]+=n-r[1]*t-r[5]*n-r[9]*s,r[14]+=s-r[2]*t-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(e){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||e)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,e=!0);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].updateMatrixWorld(e)}updateWorldMatrix(e,t,n=!1){let s=this.parent;if(e===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),t===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(e){let t=e===void 0||typeof e=="string",n={};t&&(e={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(e),s.indirectTexture=this._indirectTexture.toJSON(e),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(e)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,c){return a[c.uuid]===void 0&&(a[c.uuid]=c.toJSON(e)),c.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(e).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(e).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(e.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let c=a.shapes;if(Array.isArray(c))for(let l=0,h=c.length;l<h;l++){let d=c[l];r(e.shapes,d)}else r(e.shapes,c)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(e.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let c=0,l=this.material.length;c<l;c++)a.push(r(e.materials,this.material[c]));s.material=a}else s.material=r(e.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(e).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let c=this.animations[a];s.animations.push(r(e.animations,c))}}if(t){let a=o(e.geometries),c=o(e.materials),l=o(e.textures),h=o(e.images),d=o(e.shapes),u=o(e.skeletons),f=o(e.animations),p=o(e.nodes);a.length>0&&(n.geometries=a),c.length>0&&(n.materials=c),l.length>0&&(n.textures=l),h.length>0&&(n.images=h),d.length>0&&(n.shapes=d),u.length>0&&(n.skeletons=u),f.length>0&&(n.animations=f),p.length>0&&(n.nodes=p)}return n.object=s,n;function o(a){let c=[];for(let l in a){let h=a[l];delete h.metadata,c.push(h)}return c}}clone(e){return new this.constructor().copy(this,e)}copy(e,t=!0){if(this.name=e.name,this.up.copy(e.up),this.position.copy(e.position),this.rotation.order=e.rotation.order,this.quaternion.copy(e.quaternion),this.scale.copy(e.scale),this.pivot=e.pivot!==null?e.pivot.clone():null,this.matrix.copy(e.matrix),this.matrixWorld.copy(e.matrixWorld),this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrixWorldAutoUpdate=e.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=e.matrixWorldNeedsUpdate,this.layers.mask=e.layers.mask,this.visible=e.visible,this.castShadow=e.castShadow,this.receiveShadow=e.receiveShadow,this.frustumCulled=e.frustumCulled,this.renderOrder=e.renderOrder,this.static=e.static,this.animations=e.animations.slice(),this.userData=JSON.parse(JSON.stringify(e.userData)),t===!0)for(let n=0;n<e.children.length;n++){let s=e.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};At.DEFAULT_UP=new L(0,1,0);At.DEFAULT_MATRIX_AUTO_UPDATE=!0;At.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Zt=class extends At{constructor(){super(),this.isGroup=!0,this.type="Group"}},E_={type:"move"},vr=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Zt,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Zt,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new L,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new L),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Zt,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new L,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new L,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(e){return this._targetRay!==null&&this._targetRay.dispatchEvent(e),this._grip!==null&&this._grip.dispatchEvent(e),this._hand!==null&&this._hand.dispatchEvent(e),this}connect(e){if(e&&e.hand){let t=this._hand;if(t)for(let n of e.hand.values())this._getHandJoint(t,n)}return this.dispatchEvent({type:"connected",data:e}),this}disconnect(e){return this.dispatchEvent({type:"disconnected",data:e}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(e,t,n){let s=null,r=null,o=null,a=this._targetRay,c=this._grip,l=this._hand;if(e&&t.session.visibilityState!=="visible-blurred"){if(l&&e.hand){o=!0;for(let _ of e.hand.values()){let g=t.getJointPose(_,n),m=this._getHandJoint(l,_);g!==null&&(m.matrix.fromArray(g.transform.matrix),m.matrix.decompose(m.position,m.quaternion,m.scale),m.matrixWorldNeedsUpdate=!0,m.jointRadius=g.radius),m.visible=g!==null}let h=l.joints["index-finger-tip"],d=l.joints["thumb-tip"],u=h.position.distanceTo(d.position),f=.02,p=.005;l.inputState.pinching&&u>f+p?(l.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:e.handedness,target:this})):!l.inputState.pinching&&u<=f-p&&(l.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:e.handedness,target:this}))}else c!==null&&e.gripSpace&&(r=t.getPose(e.gripSpace,n),r!==null&&(c.matrix.fromArray(r.transform.matrix),c.matrix.decompose(c.position,c.quaternion,c.scale),c.matrixWorldNeedsUpdate=!0,r.linearVelocity?(c.hasLinearVelocity=!0,c.linearVelocity.copy(r.linearVelocity)):c.hasLinearVelocity=!1,r.angularVelocity?(c.hasAngularVelocity=!0,c.angularVelocity.copy(r.angularVelocity)):c.hasAngularVelocity=!1,c.eventsEnabled&&c.dispatchEvent({type:"gripUpdated",data:e,target:this})));a!==null&&(s=t.getPose(e.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(E_)))}return a!==null&&(a.visible=s!==null),c!==null&&(c.visible=r!==null),l!==null&&(l.visible=o!==null),this}_getHandJoint(e,t){if(e.joints[t.jointName]===void 0){let n=new Zt;n.matrixAutoUpdate=!1,n.visible=!1,e.joints[t.jointName]=n,e.add(n)}return e.joints[t.jointName]}},_m={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},qi={h:0,s:0,l:0},Pa={h:0,s:0,l:0};function gh(i,e,t){return t<0&&(t+=1),t>1&&(t-=1),t<1/6?i+(e-i)*6*t:t<1/2?e:t<2/3?i+(e-i)*6*(2/3-t):i}var Ge=class{constructor(e,t,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(e,t,n)}set(e,t,n){if(t===void 0&&n===void 0){let s=e;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(e,t,n);return this}setScalar(e){return this.r=e,this.g=e,this.b=e,this}setHex(e,t=Ct){return e=Math.floor(e),this.r=(e>>16&255)/255,this.g=(e>>8&255)/255,this.b=(e&255)/255,ht.colorSpaceToWorking(this,t),this}setRGB(e,t,n,s=ht.workingColorSpace){return this.r=e,this.g=t,this.b=n,ht.colorSpaceToWorking(this,s),this}setHSL(e,t,n,s=ht.workingColorSpace){if(e=Ru(e,1),t=ot(t,0,1),n=ot(n,0,1),t===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+t):n+t-n*t,o=2*n-r;this.r=gh(o,r,e+1/3),this.g=gh(o,r,e),this.b=gh(o,r,e-1/3)}return ht.colorSpaceToWorking(this,s),this}setStyle(e,t=Ct){function n(r){r!==void 0&&parseFloat(r)<1&&We("Color: Alpha component of "+e+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(e)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,t);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,t);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,t);break;default:We("Color: Unknown color model "+e)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(e)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,t);if(o===6)return this.setHex(parseInt(r,16),t);We("Color: Invalid hex color "+e)}else if(e&&e.length>0)return this.setColorName(e,t);return this}setColorName(e,t=Ct){let n=_m[e.toLowerCase()];return n!==void 0?this.setHex(n,t):We("Color: Unknown color "+e),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(e){return this.r=e.r,this.g=e.g,this.b=e.b,this}copySRGBToLinear(e){return this.r=Ai(e.r),this.g=Ai(e.g),this.b=Ai(e.b),this}copyLinearToSRGB(e){return this.r=dr(e.r),this.g=dr(e.g),this.b=dr(e.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(e=Ct){return ht.workingToColorSpace(ln.copy(this),e),Math.round(ot(ln.r*255,0,255))*65536+Math.round(ot(ln.g*255,0,255))*256+Math.round(ot(ln.b*255,0,255))}getHexString(e=Ct){return("000000"+this.getHex(e).toString(16)).slice(-6)}getHSL(e,t=ht.workingColorSpace){ht.workingToColorSpace(ln.copy(this),t);let n=ln.r,s=ln.g,r=ln.b,o=Math.max(n,s,r),a=Math.min(n,s,r),c,l,h=(a+o)/2;if(a===o)c=0,l=0;else{let d=o-a;switch(l=h<=.5?d/(o+a):d/(2-o-a),o){case n:c=(s-r)/d+(s<r?6:0);break;case s:c=(r-n)/d+2;break;case r:c=(n-s)/d+4;break}c/=6}return e.h=c,e.s=l,e.l=h,e}getRGB(e,t=ht.workingColorSpace){return ht.workingToColorSpace(ln.copy(this),t),e.r=ln.r,e.g=ln.g,e.b=ln.b,e}getStyle(e=Ct){ht.workingToColorSpace(ln.copy(this),e);let t=ln.r,n=ln.g,s=ln.b;return e!==Ct?`color(${e} ${t.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(t*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(e,t,n){return this.getHSL(qi),this.setHSL(qi.h+e,qi.s+t,qi.l+n)}add(e){return this.r+=e.r,this.g+=e.g,this.b+=e.b,this}addColors(e,t){return this.r=e.r+t.r,this.g=e.g+t.g,this.b=e.b+t.b,this}addScalar(e){return this.r+=e,this.g+=e,this.b+=e,this}sub(e){return this.r=Math.max(0,this.r-e.r),this.g=Math.max(0,this.g-e.g),this.b=Math.max(0,this.b-e.b),this}multiply(e){return this.r*=e.r,this.g*=e.g,this.b*=e.b,this}multiplyScalar(e){return this.r*=e,this.g*=e,this.b*=e,this}lerp(e,t){return this.r+=(e.r-this.r)*t,this.g+=(e.g-this.g)*t,this.b+=(e.b-this.b)*t,this}lerpColors(e,t,n){return this.r=e.r+(t.r-e.r)*n,this.g=e.g+(t.g-e.g)*n,this.b=e.b+(t.b-e.b)*n,this}lerpHSL(e,t){this.getHSL(qi),e.getHSL(Pa);let n=po(qi.h,Pa.h,t),s=po(qi.s,Pa.s,t),r=po(qi.l,Pa.l,t);return this.setHSL(n,s,r),this}setFromVector3(e){return this.r=e.x,this.g=e.y,this.b=e.z,this}applyMatrix3(e){let t=this.r,n=this.g,s=this.b,r=e.elements;return this.r=r[0]*t+r[3]*n+r[6]*s,this.g=r[1]*t+r[4]*n+r[7]*s,this.b=r[2]*t+r[5]*n+r[8]*s,this}equals(e){return e.r===this.r&&e.g===this.g&&e.b===this.b}fromArray(e,t=0){return this.r=e[t],this.g=e[t+1],this.b=e[t+2],this}toArray(e=[],t=0){return e[t]=this.r,e[t+1]=this.g,e[t+2]=this.b,e}fromBufferAttribute(e,t){return this.r=e.getX(t),this.g=e.getY(t),this.b=e.getZ(t),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},ln=new Ge;Ge.NAMES=_m;var vo=class extends At{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ni,this.environmentIntensity=1,this.environmentRotation=new ni,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(e,t){return super.copy(e,t),this.background=e.background!==null?e.background.clone():null,this.environment=e.environment!==null?e.environment.clone():null,this.fog=e.fog!==null?e.fog.clone():null,this.backgroundBlurriness=e.backgroundBlurriness,this.backgroundIntensity=e.backgroundIntensity,this.backgroundRotation.copy(e.backgroundRotation),this.environmentIntensity=e.environmentIntensity,this.environmentRotation.copy(e.environmentRotation),this.overrideMaterial=e.overrideMaterial!==null?e.overrideMaterial.clone():null,this.matrixAutoUpdate=e.matrixAutoUpdate,this}toJSON(e){let t=super.toJSON(e);return this.fog!==null&&(t.object.fog=this.fog.toJSON()),t.object.backgroundBlurriness=this.backgroundBlurriness,t.object.backgroundIntensity=this.backgroundIntensity,t.object.backgroundRotation=this.backgroundRotation.toArray(),t.object.environmentIntensity=this.environmentIntensity,t.object.environmentRotation=this.environmentRotation.toArray(),t}},Qn=new L,bi=new L,_h=new L,Mi=new L,tr=new L,nr=new L,Jf=new L,xh=new L,yh=new L,vh=new L,bh=new bt,Mh=new bt,Sh=new bt,Ei=class i{constructor(e=new L,t=new L,n=new L){this.a=e,this.b=t,this.c=n}static getNormal(e,t,n,s){s.subVectors(n,t),Qn.subVectors(e,t),s.cross(Qn);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(e,t,n,s,r){Qn.subVectors(s,t),bi.subVectors(n,t),_h.subVectors(e,t);let o=Qn.dot(Qn),a=Qn.dot(bi),c=Qn.dot(_h),l=bi.dot(bi),h=bi.dot(_h),d=o*l-a*a;if(d===0)return r.set(0,0,0),null;let u=1/d,f=(l*c-a*h)*u,p=(o*h-a*c)*u;return r.set(1-f-p,p,f)}static containsPoint(e,t,n,s){return this.getBarycoord(e,t,n,s,Mi)===null?!1:Mi.x>=0&&Mi.y>=0&&Mi.x+Mi.y<=1}static getInterpolation(e,t,n,s,r,o,a,c){return this.getBarycoord(e,t,n,s,Mi)===null?(c.x=0,c.y=0,"z"in c&&(c.z=0),"w"in c&&(c.w=0),null):(c.setScalar(0),c.addScaledVector(r,Mi.x),c.addScaledVector(o,Mi.y),c.addScaledVector(a,Mi.z),c)}static getInterpolatedAttribute(e,t,n,s,r,o){return bh.setScalar(0),Mh.setScalar(0),Sh.setScalar(0),bh.fromBufferAttribute(e,t),Mh.fromBufferAttribute(e,n),Sh.fromBufferAttribute(e,s),o.setScalar(0),o.addScaledVector(bh,r.x),o.addScaledVector(Mh,r.y),o.addScaledVector(Sh,r.z),o}static isFrontFacing(e,t,n,s){return Qn.subVectors(n,t),bi.subVectors(e,t),Qn.cross(bi).dot(s)<0}set(e,t,n){return this.a.copy(e),this.b.copy(t),this.c.copy(n),this}setFromPointsAndIndices(e,t,n,s){return this.a.copy(e[t]),this.b.copy(e[n]),this.c.copy(e[s]),this}setFromAttributeAndIndices(e,t,n,s){return this.a.fromBufferAttribute(e,t),this.b.fromBufferAttribute(e,n),this.c.fromBufferAttribute(e,s),this}clone(){return new this.constructor().copy(this)}copy(e){return this.a.copy(e.a),this.b.copy(e.b),this.c.copy(e.c),this}getArea(){return Qn.subVectors(this.c,this.b),bi.subVectors(this.a,this.b),Qn.cross(bi).length()*.5}getMidpoint(e){return e.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(e){return i.getNormal(this.a,this.b,this.c,e)}getPlane(e){return e.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(e,t){return i.getBarycoord(e,this.a,this.b,this.c,t)}getInterpolation(e,t,n,s,r){return i.getInterpolation(e,this.a,this.b,this.c,t,n,s,r)}containsPoint(e){return i.containsPoint(e,this.a,this.b,this.c)}isFrontFacing(e){return i.isFrontFacing(this.a,this.b,this.c,e)}intersectsBox(e){return e.intersectsTriangle(this)}closestPointToPoint(e,t){let n=this.a,s=this.b,r=this.c,o,a;tr.subVectors(s,n),nr.subVectors(r,n),xh.subVectors(e,n);let c=tr.dot(xh),l=nr.dot(xh);if(c<=0&&l<=0)return t.copy(n);yh.subVectors(e,s);let h=tr.dot(yh),d=nr.dot(yh);if(h>=0&&d<=h)return t.copy(s);let u=c*d-h*l;if(u<=0&&c>=0&&h<=0&&c-h>0)return o=c/(c-h),t.copy(n).addScaledVector(tr,o);vh.subVectors(e,r);let f=tr.dot(vh),p=nr.dot(vh);if(p>=0&&f<=p)return t.copy(r);let _=f*l-c*p;if(_<=0&&l>=0&&p<=0)return a=l/(l-p),t.copy(n).addScaledVector(nr,a);let g=h*p-f*d;if(g<=0&&d-h>=0&&f-p>=0)return Jf.subVectors(r,s),a=(d-h)/(d-h+(f-p)),t.copy(s).addScaledVector(Jf,a);let m=1/(g+_+u);return o=_*m,a=u*m,t.copy(n).addScaledVector(tr,o).addScaledVector(nr,a)}equals(e){return e.a.equals(this.a)&&e.b.equals(this.b)&&e.c.equals(this.c)}},Qt=class{constructor(e=new L(1/0,1/0,1/0),t=new L(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=e,this.max=t}set(e,t){return this.min.copy(e),this.max.copy(t),this}setFromArray(e){this.makeEmpty();for(let t=0,n=e.length;t<n;t+=3)this.expandByPoint(ei.fromArray(e,t));return this}setFromBufferAttribute(e){this.makeEmpty();for(let t=0,n=e.count;t<n;t++)this.expandByPoint(ei.fromBufferAttribute(e,t));return this}setFromPoints(e){this.makeEmpty();for(let t=0,n=e.length;t<n;t++)this.expandByPoint(e[t]);return this}setFromCenterAndSize(e,t){let n=ei.copy(t).multiplyScalar(.5);return this.min.copy(e).sub(n),this.max.copy(e).add(n),this}setFromObject(e,t=!1){return this.makeEmpty(),this.expandByObject(e,t)}clone(){return new this.constructor().copy(this)}copy(e){return this.min.copy(e.min),this.max.copy(e.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(e){return this.isEmpty()?e.set(0,0,0):e.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(e){return this.isEmpty()?e.set(0,0,0):e.subVectors(this.max,this.min)}expandByPoint(e){return this.min.min(e),this.max.max(e),this}expandByVector(e){return this.min.sub(e),this.max.add(e),this}expandByScalar(e){return this.min.addScalar(-e),this.max.addScalar(e),this}expandByObject(e,t=!1){e.updateWorldMatrix(!1,!1);let n=e.geometry;if(n!==void 0){let r=n.getAttribute("position");if(t===!0&&r!==void 0&&e.isInstancedMesh!==!0&&e.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)e.isMesh===!0?e.getVertexPosition(o,ei):ei.fromBufferAttribute(r,o),ei.applyMatrix4(e.matrixWorld),this.expandByPoint(ei);else e.boundingBox!==void 0?(e.boundingBox===null&&e.computeBoundingBox(),La.copy(e.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),La.copy(n.boundingBox)),La.applyMatrix4(e.matrixWorld),this.union(La)}let s=e.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],t);return this}containsPoint(e){return e.x>=this.min.x&&e.x<=this.max.x&&e.y>=this.min.y&&e.y<=this.max.y&&e.z>=this.min.z&&e.z<=this.max.z}containsBox(e){return this.min.x<=e.min.x&&e.max.x<=this.max.x&&this.min.y<=e.min.y&&e.max.y<=this.max.y&&this.min.z<=e.min.z&&e.max.z<=this.max.z}getParameter(e,t){return t.set((e.x-this.min.x)/(this.max.x-this.min.x),(e.y-this.min.y)/(this.max.y-this.min.y),(e.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(e){return e.max.x>=this.min.x&&e.min.x<=this.max.x&&e.max.y>=this.min.y&&e.min.y<=this.max.y&&e.max.z>=this.min.z&&e.min.z<=this.max.z}intersectsSphere(e){return this.clampPoint(e.center,ei),ei.distanceToSquared(e.center)<=e.radius*e.radius}intersectsPlane(e){let t,n;return e.normal.x>0?(t=e.normal.x*this.min.x,n=e.normal.x*this.max.x):(t=e.normal.x*this.max.x,n=e.normal.x*this.min.x),e.normal.y>0?(t+=e.normal.y*this.min.y,n+=e.normal.y*this.max.y):(t+=e.normal.y*this.max.y,n+=e.normal.y*this.min.y),e.normal.z>0?(t+=e.normal.z*this.min.z,n+=e.normal.z*this.max.z):(t+=e.normal.z*this.max.z,n+=e.normal.z*this.min.z),t<=-e.constant&&n>=-e.constant}intersectsTriangle(e){if(this.isEmpty())return!1;this.getCenter(so),Na.subVectors(this.max,so),ir.subVectors(e.a,so),sr.subVectors(e.b,so),rr.subVectors(e.c,so),Yi.subVectors(sr,ir),ji.subVectors(rr,sr),ys.subVectors(ir,rr);let t=[0,-Yi.z,Yi.y,0,-ji.z,ji.y,0,-ys.z,ys.y,Yi.z,0,-Yi.x,ji.z,0,-ji.x,ys.z,0,-ys.x,-Yi.y,Yi.x,0,-ji.y,ji.x,0,-ys.y,ys.x,0];return!wh(t,ir,sr,rr,Na)||(t=[1,0,0,0,1,0,0,0,1],!wh(t,ir,sr,rr,Na))?!1:(Da.crossVectors(Yi,ji),t=[Da.x,Da.y,Da.z],wh(t,ir,sr,rr,Na))}clampPoint(e,t){return t.copy(e).clamp(this.min,this.max)}distanceToPoint(e){return this.clampPoint(e,ei).distanceTo(e)}getBoundingSphere(e){return this.isEmpty()?e.makeEmpty():(this.getCenter(e.center),e.radius=this.getSize(ei).length()*.5),e}intersect(e){return this.min.max(e.min),this.max.min(e.max),this.isEmpty()&&this.makeEmpty(),this}union(e){return this.min.min(e.min),this.max.max(e.max),this}applyMatrix4(e){return this.isEmpty()?this:(Si[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(e),Si[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(e),Si[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(e),Si[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(e),Si[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(e),Si[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(e),Si[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(e),Si[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(e),this.setFromPoints(Si),this)}translate(e){return this.min.add(e),this.max.add(e),this}equals(e){return e.min.equals(this.min)&&e.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(e){return this.min.fromArray(e.min),this.max.fromArray(e.max),this}},Si=[new L,new L,new L,new L,new L,new L,new L,new L],ei=new L,La=new Qt,ir=new L,sr=new L,rr=new L,Yi=new L,ji=new L,ys=new L,so=new L,Na=new L,Da=new L,vs=new L;function wh(i,e,t,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){vs.fromArray(i,r);let a=s.x*Math.abs(vs.x)+s.y*Math.abs(vs.y)+s.z*Math.abs(vs.z),c=e.dot(vs),l=t.dot(vs),h=n.dot(vs);if(Math.max(-Math.max(c,l,h),Math.min(c,l,h))>a)return!1}return!0}var kt=new L,Ua=new xe,A_=0,Nt=class extends ti{constructor(e,t,n=!1){if(super(),Array.isArray(e))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:A_++}),this.name="",this.array=e,this.itemSize=t,this.count=e!==void 0?e.length/t:0,this.normalized=n,this.usage=Eu,this.updateRanges=[],this.gpuType=Fn,this.version=0,this._normalizationScale=e!==void 0?Tc(e):void 0}onUploadCallback(){}set needsUpdate(e){e===!0&&this.version++}setUsage(e){return this.usage=e,this}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}copy(e){return this.name=e.name,this.array=new e.array.constructor(e.array),this.itemSize=e.itemSize,this.count=e.count,this.normalized=e.normalized,this.usage=e.usage,this.gpuType=e.gpuType,this._normalizationScale=e._normalizationScale,this}copyAt(e,t,n){e*=this.itemSize,n*=t.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[e+s]=t.array[n+s];return this}copyArray(e){return this.array.set(e),this}applyMatrix3(e){if(this.itemSize===2)for(let t=0,n=this.count;t<n;t++)Ua.fromBufferAttribute(this,t),Ua.applyMatrix3(e),this.setXY(t,Ua.x,Ua.y);else if(this.itemSize===3)for(let t=0,n=this.count;t<n;t++)kt.fromBufferAttribute(this,t),kt.applyMatrix3(e),this.setXYZ(t,kt.x,kt.y,kt.z);return this}applyMatrix4(e){for(let t=0,n=this.count;t<n;t++)kt.fromBufferAttribute(this,t),kt.applyMatrix4(e),this.setXYZ(t,kt.x,kt.y,kt.z);return this}applyNormalMatrix(e){for(let t=0,n=this.count;t<n;t++)kt.fromBufferAttribute(this,t),kt.applyNormalMatrix(e),this.setXYZ(t,kt.x,kt.y,kt.z);return this}transformDirection(e){for(let t=0,n=this.count;t<n;t++)kt.fromBufferAttribute(this,t),kt.transformDirection(e),this.setXYZ(t,kt.x,kt.y,kt.z);return this}set(e,t=0){return this.array.set(e,t),this}getComponent(e,t){let n=this.array[e*this.itemSize+t];return this.normalized&&(n=this._denormalize(n)),n}setComponent(e,t,n){return this.normalized&&(n=this._normalize(n)),this.array[e*this.itemSize+t]=n,this}getX(e){let t=this.array[e*this.itemSize];return this.normalized&&(t=this._denormalize(t)),t}setX(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize]=t,this}getY(e){let t=this.array[e*this.itemSize+1];return this.normalized&&(t=this._denormalize(t)),t}setY(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+1]=t,this}getZ(e){let t=this.array[e*this.itemSize+2];return this.normalized&&(t=this._denormalize(t)),t}setZ(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+2]=t,this}getW(e){let t=this.array[e*this.itemSize+3];return this.normalized&&(t=this._denormalize(t)),t}setW(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+3]=t,this}setXY(e,t,n){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n)),this.array[e+0]=t,this.array[e+1]=n,this}setXYZ(e,t,n,s){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s)),this.array[e+0]=t,this.array[e+1]=n,this.array[e+2]=s,this}setXYZW(e,t,n,s,r){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[e+0]=t,this.array[e+1]=n,this.array[e+2]=s,this.array[e+3]=r,this}onUpload(e){return this.onUploadCallback=e,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let e={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return e.name=this.name,e.usage=this.usage,e.gpuType=this.gpuType,e}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(e){let t=this._normalizationScale;return t!==void 0?Math.max(e/t,-1):Iu(e,this.array)}_normalize(e){let t=this._normalizationScale;return t!==void 0?Math.round(e*t):Pu(e,this.array)}};var bo=class extends Nt{constructor(e,t,n){super(new Uint16Array(e),t,n)}};var Mo=class extends Nt{constructor(e,t,n){super(new Uint32Array(e),t,n)}};var Tt=class extends Nt{constructor(e,t,n){super(new Float32Array(e),t,n)}},R_=new Qt,ro=new L,Th=new L,Sn=class{constructor(e=new L,t=-1){this.isSphere=!0,this.center=e,this.radius=t}set(e,t){return this.center.copy(e),this.radius=t,this}setFromPoints(e,t){let n=this.center;t!==void 0?n.copy(t):R_.setFromPoints(e).getCenter(n);let s=0;for(let r=0,o=e.length;r<o;r++)s=Math.max(s,n.distanceToSquared(e[r]));return this.radius=Math.sqrt(s),this}copy(e){return this.center.copy(e.center),this.radius=e.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(e){return e.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(e){return e.distanceTo(this.center)-this.radius}intersectsSphere(e){let t=this.radius+e.radius;return e.center.distanceToSquared(this.center)<=t*t}intersectsBox(e){return e.intersectsSphere(this)}intersectsPlane(e){return Math.abs(e.distanceToPoint(this.center))<=this.radius}clampPoint(e,t){let n=this.center.distanceToSquared(e);return t.copy(e),n>this.radius*this.radius&&(t.sub(this.center).normalize(),t.multiplyScalar(this.radius).add(this.center)),t}getBoundingBox(e){return this.isEmpty()?(e.makeEmpty(),e):(e.set(this.center,this.center),e.expandByScalar(this.radius),e)}applyMatrix4(e){return this.center.applyMatrix4(e),this.radius=this.radius*e.getMaxScaleOnAxis(),this}translate(e){return this.center.add(e),this}expandByPoint(e){if(this.isEmpty())return this.center.copy(e),this.radius=0,this;ro.subVectors(e,this.center);let t=ro.lengthSq();if(t>this.radius*this.radius){let n=Math.sqrt(t),s=(n-this.radius)*.5;this.center.addScaledVector(ro,s/n),this.radius+=s}return this}union(e){return e.isEmpty()?this:this.isEmpty()?(this.copy(e),this):(this.center.equals(e.center)===!0?this.radius=Math.max(this.radius,e.radius):(Th.subVectors(e.center,this.center).setLength(e.radius),this.expandByPoint(ro.copy(e.center).add(Th)),this.expandByPoint(ro.copy(e.center).sub(Th))),this)}equals(e){return e.center.equals(this.center)&&e.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(e){return this.radius=e.radius,this.center.fromArray(e.center),this}},C_=0,zn=new je,Eh=new At,or=new L,Dn=new Qt,oo=new Qt,Kt=new L,Pt=class i extends ti{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:C_++}),this.uuid=ri(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(e){return Array.isArray(e)?this.index=new(e_(e)?Mo:bo)(e,1):this.index=e,this}setIndirect(e,t=0){return this.indirect=e,this.indirectOffset=t,this}getIndirect(){return this.indirect}getAttribute(e){return this.attributes[e]}setAttribute(e,t){return this.attributes[e]=t,this}deleteAttribute(e){return delete this.attributes[e],this}hasAttribute(e){return this.attributes[e]!==void 0}addGroup(e,t,n=0){this.groups.push({start:e,count:t,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(e,t){this.drawRange.start=e,this.drawRange.count=t}applyMatrix4(e){let t=this.attributes.position;t!==void 0&&(t.applyMatrix4(e),t.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new tt().getNormalMatrix(e);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(e),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(e){return zn.makeRotationFromQuaternion(e),this.applyMatrix4(zn),this}rotateX(e){return zn.makeRotationX(e),this.applyMatrix4(zn),this}rotateY(e){return zn.makeRotationY(e),this.applyMatrix4(zn),this}rotateZ(e){return zn.makeRotationZ(e),this.applyMatrix4(zn),this}translate(e,t,n){return zn.makeTranslation(e,t,n),this.applyMatrix4(zn),this}scale(e,t,n){return zn.makeScale(e,t,n),this.applyMatrix4(zn),this}lookAt(e){return Eh.lookAt(e),Eh.updateMatrix(),this.applyMatrix4(Eh.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(or).negate(),this.translate(or.x,or.y,or.z),this}setFromPoints(e){let t=this.getAttribute("position");if(t===void 0){let n=[];for(let s=0,r=e.length;s<r;s++){let o=e[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Tt(n,3))}else{let n=Math.min(e.length,t.count);for(let s=0;s<n;s++){let r=e[s];t.setXYZ(s,r.x,r.y,r.z||0)}e.length>t.count&&We("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),t.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Qt);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){Je("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new L(-1/0,-1/0,-1/0),new L(1/0,1/0,1/0));return}if(e!==void 0){if(this.boundingBox.setFromBufferAttribute(e),t)for(let n=0,s=t.length;n<s;n++){let r=t[n];Dn.setFromBufferAttribute(r),this.morphTargetsRelative?(Kt.addVectors(this.boundingBox.min,Dn.min),this.boundingBox.expandByPoint(Kt),Kt.addVectors(this.boundingBox.max,Dn.max),this.boundingBox.expandByPoint(Kt)):(this.boundingBox.expandByPoint(Dn.min),this.boundingBox.expandByPoint(Dn.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&Je('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Sn);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){Je("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new L,1/0);return}if(e){let n=this.boundingSphere.center;if(Dn.setFromBufferAttribute(e),t)for(let r=0,o=t.length;r<o;r++){let a=t[r];oo.setFromBufferAttribute(a),this.morphTargetsRelative?(Kt.addVectors(Dn.min,oo.min),Dn.expandByPoint(Kt),Kt.addVectors(Dn.max,oo.max),Dn.expandByPoint(Kt)):(Dn.expandByPoint(oo.min),Dn.expandByPoint(oo.max))}Dn.getCenter(n);let s=0;for(let r=0,o=e.count;r<o;r++)Kt.fromBufferAttribute(e,r),s=Math.max(s,n.distanceToSquared(Kt));if(t)for(let r=0,o=t.length;r<o;r++){let a=t[r],c=this.morphTargetsRelative;for(let l=0,h=a.count;l<h;l++)Kt.fromBufferAttribute(a,l),c&&(or.fromBufferAttribute(e,l),Kt.add(or)),s=Math.max(s,n.distanceToSquared(Kt))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&Je('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let e=this.index,t=this.attributes;if(e===null||t.position===void 0||t.normal===void 0||t.uv===void 0){Je("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=t.position,s=t.normal,r=t.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Nt(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],c=[],l=new Uint8Array(n.count);for(let F=0;F<n.count;F++)a[F]=new L,c[F]=new L;let h=new L,d=new L,u=new L,f=new xe,p=new xe,_=new xe,g=new L,m=new L;function v(F,I,D){l[F]=l[I]=l[D]=1,h.fromBufferAttribute(n,F),d.fromBufferAttribute(n,I),u.fromBufferAttribute(n,D),f.fromBufferAttribute(r,F),p.fromBufferAttribute(r,I),_.fromBufferAttribute(r,D),d.sub(h),u.sub(h),p.sub(f),_.sub(f);let $=1/(p.x*_.y-_.x*p.y);isFinite($)&&(g.copy(d).multiplyScalar(_.y).addScaledVector(u,-p.y).multiplyScalar($),m.copy(u).multiplyScalar(p.x).addScaledVector(d,-_.x).multiplyScalar($),a[F].add(g),a[I].add(g),a[D].add(g),c[F].add(m),c[I].add(m),c[D].add(m))}let M=this.groups;M.length===0&&(M=[{start:0,count:e.count}]);for(let F=0,I=M.length;F<I;++F){let D=M[F],$=D.start,J=D.count;for(let P=$,k=$+J;P<k;P+=3)v(e.getX(P+0),e.getX(P+1),e.getX(P+2))}let b=new L,S=new L,T=new L,y=new L;function w(F){T.fromBufferAttribute(s,F),y.copy(T);let I=a[F];b.copy(I),b.sub(T.multiplyScalar(T.dot(I))).normalize(),S.crossVectors(y,I);let $=S.dot(c[F])<0?-1:1;o.setXYZW(F,b.x,b.y,b.z,$)}for(let F=0,I=n.count;F<I;++F)l[F]&&w(F);this._transformed=!0}computeVertexNormals(){let e=this.index,t=this.getAttribute("position");if(t!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==t.count)n=new Nt(new Float32Array(t.count*3),3),this.setAttribute("normal",n);else for(let u=0,f=n.count;u<f;u++)n.setXYZ(u,0,0,0);let s=new L,r=new L,o=new L,a=new L,c=new L,l=new L,h=new L,d=new L;if(e)for(let u=0,f=e.count;u<f;u+=3){let p=e.getX(u+0),_=e.getX(u+1),g=e.getX(u+2);s.fromBufferAttribute(t,p),r.fromBufferAttribute(t,_),o.fromBufferAttribute(t,g),h.subVectors(o,r),d.subVectors(s,r),h.cross(d),a.fromBufferAttribute(n,p),c.fromBufferAttribute(n,_),l.fromBufferAttribute(n,g),a.add(h),c.add(h),l.add(h),n.setXYZ(p,a.x,a.y,a.z),n.setXYZ(_,c.x,c.y,c.z),n.setXYZ(g,l.x,l.y,l.z)}else for(let u=0,f=t.count;u<f;u+=3)s.fromBufferAttribute(t,u+0),r.fromBufferAttribute(t,u+1),o.fromBufferAttribute(t,u+2),h.subVectors(o,r),d.subVectors(s,r),h.cross(d),n.setXYZ(u+0,h.x,h.y,h.z),n.setXYZ(u+1,h.x,h.y,h.z),n.setXYZ(u+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let e=this.attributes.normal;for(let t=0,n=e.count;t<n;t++)Kt.fromBufferAttribute(e,t),Kt.normalize(),e.setXYZ(t,Kt.x,Kt.y,Kt.z)}toNonIndexed(){function e(a,c){let l=a.array,h=a.itemSize,d=a.normalized,u=new l.constructor(c.length*h),f=0,p=0;for(let _=0,g=c.length;_<g;_++){a.isInterleavedBufferAttribute?f=c[_]*a.data.stride+a.offset:f=c[_]*h;for(let m=0;m<h;m++)u[p++]=l[f++]}return new Nt(u,h,d)}if(this.index===null)return We("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let t=new i,n=this.index.array,s=this.attributes;for(let a in s){let c=s[a],l=e(c,n);t.setAttribute(a,l)}let r=this.morphAttributes;for(let a in r){let c=[],l=r[a];for(let h=0,d=l.length;h<d;h++){let u=l[h],f=e(u,n);c.push(f)}t.morphAttributes[a]=c}t.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,c=o.length;a<c;a++){let l=o[a];t.addGroup(l.start,l.count,l.materialIndex)}return t}toJSON(){let e={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(e.uuid=this.uuid,e.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,e.name=this.name,Object.keys(this.userData).length>0&&(e.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let c=this.parameters;for(let l in c)c[l]!==void 0&&(e[l]=c[l]);return e}e.data={attributes:{}};let t=this.index;t!==null&&(e.data.index={type:t.array.constructor.name,array:Array.prototype.slice.call(t.array)});let n=this.attributes;for(let c in n){let l=n[c];e.data.attributes[c]=l.toJSON(e.data)}let s={},r=!1;for(let c in this.morphAttributes){let l=this.morphAttributes[c],h=[];for(let d=0,u=l.length;d<u;d++){let f=l[d];h.push(f.toJSON(e.data))}h.length>0&&(s[c]=h,r=!0)}r&&(e.data.morphAttributes=s,e.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(e.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(e.data.boundingSphere=a.toJSON()),e}clone(){return new this.constructor().copy(this)}copy(e){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let t={};this.name=e.name;let n=e.index;n!==null&&this.setIndex(n.clone());let s=e.attributes;for(let l in s){let h=s[l];this.setAttribute(l,h.clone(t))}let r=e.morphAttributes;for(let l in r){let h=[],d=r[l];for(let u=0,f=d.length;u<f;u++)h.push(d[u].clone(t));this.morphAttributes[l]=h}this.morphTargetsRelative=e.morphTargetsRelative;let o=e.groups;for(let l=0,h=o.length;l<h;l++){let d=o[l];this.addGroup(d.start,d.count,d.materialIndex)}let a=e.boundingBox;a!==null&&(this.boundingBox=a.clone());let c=e.boundingSphere;return c!==null&&(this.boundingSphere=c.clone()),this.drawRange.start=e.drawRange.start,this.drawRange.count=e.drawRange.count,this.userData=e.userData,this._transformed=e._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}},br=class{constructor(e,t){this.isInterleavedBuffer=!0,this.array=e,this.stride=t,this.count=e!==void 0?e.length/t:0,this.usage=Eu,this.updateRanges=[],this.version=0,this.uuid=ri()}onUploadCallback(){}set needsUpdate(e){e===!0&&this.version++}setUsage(e){return this.usage=e,this}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}copy(e){return this.array=new e.array.constructor(e.array),this.count=e.count,this.stride=e.stride,this.usage=e.usage,this}copyAt(e,t,n){e*=this.stride,n*=t.stride;for(let s=0,r=this.stride;s<r;s++)this.array[e+s]=t.array[n+s];return this}set(e,t=0){return this.array.set(e,t),this}clone(e){e.arrayBuffers===void 0&&(e.arrayBuffers={});let t=Qf(this.array);e.arrayBuffers[t]===void 0&&(e.arrayBuffers[t]=this.array.slice(0).buffer);let n=new this.array.constructor(e.arrayBuffers[t]),s=new this.constructor(n,this.stride);return s.setUsage(this.usage),s}onUpload(e){return this.onUploadCallback=e,this}toJSON(e){e.arrayBuffers===void 0&&(e.arrayBuffers={});let t=Qf(this.array);e.arrayBuffers[t]===void 0&&(e.arrayBuffers[t]=Array.from(new Uint32Array(this.array.slice(0).buffer)));let n={uuid:this.uuid,buffer:t,type:this.array.constructor.name,stride:this.stride};return n.usage=this.usage,n}};function Qf(i){return i.buffer._uuid===void 0&&(i.buffer._uuid=ri()),i.byteOffset===0&&i.byteLength===i.buffer.byteLength?i.buffer._uuid:i.buffer._uuid+":"+i.byteOffset+":"+i.byteLength}var mn=new L,Mr=class i{constructor(e,t,n,s=!1){this.isInterleavedBufferAttribute=!0,this.name="",this.data=e,this.itemSize=t,this.offset=n,this.normalized=s,this._normalizationScale=e!==void 0?Tc(e.array):void 0}get count(){return this.data.count}get array(){return this.data.array}set needsUpdate(e){this.data.needsUpdate=e}applyMatrix4(e){for(let t=0,n=this.data.count;t<n;t++)mn.fromBufferAttribute(this,t),mn.applyMatrix4(e),this.setXYZ(t,mn.x,mn.y,mn.z);return this}applyNormalMatrix(e){for(let t=0,n=this.count;t<n;t++)mn.fromBufferAttribute(this,t),mn.applyNormalMatrix(e),this.setXYZ(t,mn.x,mn.y,mn.z);return this}transformDirection(e){for(let t=0,n=this.count;t<n;t++)mn.fromBufferAttribute(this,t),mn.transformDirection(e),this.setXYZ(t,mn.x,mn.y,mn.z);return this}getComponent(e,t){let n=this.array[e*this.data.stride+this.offset+t];return this.normalized&&(n=this._denormalize(n)),n}setComponent(e,t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[e*this.data.stride+this.offset+t]=n,this}setX(e,t){return this.normalized&&(t=this._normalize(t)),this.data.array[e*this.data.stride+this.offset]=t,this}setY(e,t){return this.normalized&&(t=this._normalize(t)),this.data.array[e*this.data.stride+this.offset+1]=t,this}setZ(e,t){return this.normalized&&(t=this._normalize(t)),this.data.array[e*this.data.stride+this.offset+2]=t,this}setW(e,t){return this.normalized&&(t=this._normalize(t)),this.data.array[e*this.data.stride+this.offset+3]=t,this}getX(e){let t=this.data.array[e*this.data.stride+this.offset];return this.normalized&&(t=this._denormalize(t)),t}getY(e){let t=this.data.array[e*this.data.stride+this.offset+1];return this.normalized&&(t=this._denormalize(t)),t}getZ(e){let t=this.data.array[e*this.data.stride+this.offset+2];return this.normalized&&(t=this._denormalize(t)),t}getW(e){let t=this.data.array[e*this.data.stride+this.offset+3];return this.normalized&&(t=this._denormalize(t)),t}setXY(e,t,n){return e=e*this.data.stride+this.offset,this.normalized&&(t=this._normalize(t),n=this._normalize(n)),this.data.array[e+0]=t,this.data.array[e+1]=n,this}setXYZ(e,t,n,s){return e=e*this.data.stride+this.offset,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s)),this.data.array[e+0]=t,this.data.array[e+1]=n,this.data.array[e+2]=s,this}setXYZW(e,t,n,s,r){return e=e*this.data.stride+this.offset,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.data.array[e+0]=t,this.data.array[e+1]=n,this.data.array[e+2]=s,this.data.array[e+3]=r,this}clone(e){if(e===void 0){xo("InterleavedBufferAttribute.clone(): Cloning an interleaved buffer attribute will de-interleave buffer data.");let t=[];for(let n=0;n<this.count;n++){let s=n*this.data.stride+this.offset;for(let r=0;r<this.itemSize;r++)t.push(this.data.array[s+r])}return new Nt(new this.array.constructor(t),this.itemSize,this.normalized)}else return e.interleavedBuffers===void 0&&(e.interleavedBuffers={}),e.interleavedBuffers[this.data.uuid]===void 0&&(e.interleavedBuffers[this.data.uuid]=this.data.clone(e)),new i(e.interleavedBuffers[this.data.uuid],this.itemSize,this.offset,this.normalized)}toJSON(e){if(e===void 0){xo("InterleavedBufferAttribute.toJSON(): Serializing an interleaved buffer attribute will de-interleave buffer data.");let t=[];for(let n=0;n<this.count;n++){let s=n*this.data.stride+this.offset;for(let r=0;r<this.itemSize;r++)t.push(this.data.array[s+r])}return{itemSize:this.itemSize,type:this.array.constructor.name,array:t,normalized:this.normalized}}else return e.interleavedBuffers===void 0&&(e.interleavedBuffers={}),e.interleavedBuffers[this.data.uuid]===void 0&&(e.interleavedBuffers[this.data.uuid]=this.data.toJSON(e)),{isInterleavedBufferAttribute:!0,itemSize:this.itemSize,data:this.data.uuid,offset:this.offset,normalized:this.normalized}}_denormalize(e){let t=this._normalizationScale;return t!==void 0?Math.max(e/t,-1):Iu(e,this.data.array)}_normalize(e){let t=this._normalizationScale;return t!==void 0?Math.round(e*t):Pu(e,this.data.array)}},Ah=new L,I_=new L,P_=new tt,gn=class{constructor(e=new L(1,0,0),t=0){this.isPlane=!0,this.normal=e,this.constant=t}set(e,t){return this.normal.copy(e),this.constant=t,this}setComponents(e,t,n,s){return this.normal.set(e,t,n),this.constant=s,this}setFromNormalAndCoplanarPoint(e,t){return this.normal.copy(e),this.constant=-t.dot(this.normal),this}setFromCoplanarPoints(e,t,n){let s=Ah.subVectors(n,t).cross(I_.subVectors(e,t)).normalize();return this.setFromNormalAndCoplanarPoint(s,e),this}copy(e){return this.normal.copy(e.normal),this.constant=e.constant,this}normalize(){let e=1/this.normal.length();return this.normal.multiplyScalar(e),this.constant*=e,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(e){return this.normal.dot(e)+this.constant}distanceToSphere(e){return this.distanceToPoint(e.center)-e.radius}projectPoint(e,t){return t.copy(e).addScaledVector(this.normal,-this.distanceToPoint(e))}intersectLine(e,t,n=!0){let s=e.delta(Ah),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(e.start)===0?t.copy(e.start):null;let o=-(e.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:t.copy(e.start).addScaledVector(s,o)}intersectsLine(e){let t=this.distanceToPoint(e.start),n=this.distanceToPoint(e.end);return t<0&&n>0||n<0&&t>0}intersectsBox(e){return e.intersectsPlane(this)}intersectsSphere(e){return e.intersectsPlane(this)}coplanarPoint(e){return e.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(e,t){let n=t||P_.getNormalMatrix(e),s=this.coplanarPoint(Ah).applyMatrix4(e),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(e){return this.constant-=e.dot(this.normal),this}equals(e){return e.normal.equals(this.normal)&&e.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(e){return this.normal.fromArray(e.normal),this.constant=e.constant,this}},L_=0,en=class extends ti{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:L_++}),this.uuid=ri(),this.name="",this.type="Material",this.blending=Dr,this.side=An,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=ou,this.blendDst=au,this.blendEquation=Os,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new Ge(0,0,0),this.blendAlpha=0,this.depthFunc=fr,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=am,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=ol,this.stencilZFail=ol,this.stencilZPass=ol,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(e){this._alphaTest>0!=e>0&&this.version++,this._alphaTest=e}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(e){if(e!==void 0)for(let t in e){let n=e[t];if(n===void 0){We(`Material: parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){We(`Material: '${t}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[t]=n}}toJSON(e){let t=e===void 0||typeof e=="string";t&&(e={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(e).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(e).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(e).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(e).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(e).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(e).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(e).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(e).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(e).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(e).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(e).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(e).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(e).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(e).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(e).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(e).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(e).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(e).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(e).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(e).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(e).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(e).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(e).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(e).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(e).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(e).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(e).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let c=r[a];delete c.metadata,o.push(c)}return o}if(t){let r=s(e.textures),o=s(e.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(e,t){if(e.uuid!==void 0&&(this.uuid=e.uuid),e.name!==void 0&&(this.name=e.name),e.color!==void 0&&this.color!==void 0&&this.color.setHex(e.color),e.roughness!==void 0&&(this.roughness=e.roughness),e.metalness!==void 0&&(this.metalness=e.metalness),e.sheen!==void 0&&(this.sheen=e.sheen),e.sheenColor!==void 0&&(this.sheenColor=new Ge().setHex(e.sheenColor)),e.sheenRoughness!==void 0&&(this.sheenRoughness=e.sheenRoughness),e.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(e.emissive),e.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(e.specular),e.specularIntensity!==void 0&&(this.specularIntensity=e.specularIntensity),e.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(e.specularColor),e.shininess!==void 0&&(this.shininess=e.shininess),e.clearcoat!==void 0&&(this.clearcoat=e.clearcoat),e.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=e.clearcoatRoughness),e.diffuseRoughness!==void 0&&(this.diffuseRoughness=e.diffuseRoughness),e.dispersion!==void 0&&(this.dispersion=e.dispersion),e.retroreflectivity!==void 0&&(this.retroreflectivity=e.retroreflectivity),e.iridescence!==void 0&&(this.iridescence=e.iridescence),e.iridescenceIOR!==void 0&&(this.iridescenceIOR=e.iridescenceIOR),e.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessMinimum),e.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=e.iridescenceThicknessMaximum),e.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=e.iridescenceThicknessRange[1]),e.transmission!==void 0&&(this.transmission=e.transmission),e.thickness!==void 0&&(this.thickness=e.thickness),e.attenuationDistance!==void 0&&(this.attenuationDistance=e.attenuationDistance),e.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(e.attenuationColor),e.anisotropy!==void 0&&(this.anisotropy=e.anisotropy),e.anisotropyRotation!==void 0&&(this.anisotropyRotation=e.anisotropyRotation),e.fog!==void 0&&(this.fog=e.fog),e.flatShading!==void 0&&(this.flatShading=e.flatShading),e.blending!==void 0&&(this.blending=e.blending),e.combine!==void 0&&(this.combine=e.combine),e.side!==void 0&&(this.side=e.side),e.shadowSide!==void 0&&(this.shadowSide=e.shadowSide),e.opacity!==void 0&&(this.opacity=e.opacity),e.transparent!==void 0&&(this.transparent=e.transparent),e.alphaTest!==void 0&&(this.alphaTest=e.alphaTest),e.alphaHash!==void 0&&(this.alphaHash=e.alphaHash),e.depthFunc!==void 0&&(this.depthFunc=e.depthFunc),e.depthTest!==void 0&&(this.depthTest=e.depthTest),e.depthWrite!==void 0&&(this.depthWrite=e.depthWrite),e.colorWrite!==void 0&&(this.colorWrite=e.colorWrite),e.clippingPlanes!==void 0&&(this.clippingPlanes=e.clippingPlanes.map(n=>new gn().fromJSON(n))),e.clipIntersection!==void 0&&(this.clipIntersection=e.clipIntersection),e.clipShadows!==void 0&&(this.clipShadows=e.clipShadows),e.depthPacking!==void 0&&(this.depthPacking=e.depthPacking),e.blendSrc!==void 0&&(this.blendSrc=e.blendSrc),e.blendDst!==void 0&&(this.blendDst=e.blendDst),e.blendEquation!==void 0&&(this.blendEquation=e.blendEquation),e.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=e.blendSrcAlpha),e.blendDstAlpha!==void 0&&(this.blendDstAlpha=e.blendDstAlpha),e.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=e.blendEquationAlpha),e.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(e.blendColor),e.blendAlpha!==void 0&&(this.blendAlpha=e.blendAlpha),e.stencilWriteMask!==void 0&&(this.stencilWriteMask=e.stencilWriteMask),e.stencilFunc!==void 0&&(this.stencilFunc=e.stencilFunc),e.stencilRef!==void 0&&(this.stencilRef=e.stencilRef),e.stencilFuncMask!==void 0&&(this.stencilFuncMask=e.stencilFuncMask),e.stencilFail!==void 0&&(this.stencilFail=e.stencilFail),e.stencilZFail!==void 0&&(this.stencilZFail=e.stencilZFail),e.stencilZPass!==void 0&&(this.stencilZPass=e.stencilZPass),e.stencilWrite!==void 0&&(this.stencilWrite=e.stencilWrite),e.wireframe!==void 0&&(this.wireframe=e.wireframe),e.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=e.wireframeLinewidth),e.wireframeLinecap!==void 0&&(this.wireframeLinecap=e.wireframeLinecap),e.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=e.wireframeLinejoin),e.rotation!==void 0&&(this.rotation=e.rotation),e.linewidth!==void 0&&(this.linewidth=e.linewidth),e.linecap!==void 0&&(this.linecap=e.linecap),e.linejoin!==void 0&&(this.linejoin=e.linejoin),e.dashSize!==void 0&&(this.dashSize=e.dashSize),e.gapSize!==void 0&&(this.gapSize=e.gapSize),e.scale!==void 0&&(this.scale=e.scale),e.polygonOffset!==void 0&&(this.polygonOffset=e.polygonOffset),e.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=e.polygonOffsetFactor),e.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=e.polygonOffsetUnits),e.dithering!==void 0&&(this.dithering=e.dithering),e.alphaToCoverage!==void 0&&(this.alphaToCoverage=e.alphaToCoverage),e.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=e.premultipliedAlpha),e.forceSinglePass!==void 0&&(this.forceSinglePass=e.forceSinglePass),e.allowOverride!==void 0&&(this.allowOverride=e.allowOverride),e.visible!==void 0&&(this.visible=e.visible),e.toneMapped!==void 0&&(this.toneMapped=e.toneMapped),e.userData!==void 0&&(this.userData=e.userData),e.vertexColors!==void 0&&(typeof e.vertexColors=="number"?this.vertexColors=e.vertexColors>0:this.vertexColors=e.vertexColors),e.size!==void 0&&(this.size=e.size),e.sizeAttenuation!==void 0&&(this.sizeAttenuation=e.sizeAttenuation),e.map!==void 0&&(this.map=t[e.map]||null),e.matcap!==void 0&&(this.matcap=t[e.matcap]||null),e.alphaMap!==void 0&&(this.alphaMap=t[e.alphaMap]||null),e.bumpMap!==void 0&&(this.bumpMap=t[e.bumpMap]||null),e.bumpScale!==void 0&&(this.bumpScale=e.bumpScale),e.normalMap!==void 0&&(this.normalMap=t[e.normalMap]||null),e.normalMapType!==void 0&&(this.normalMapType=e.normalMapType),e.normalScale!==void 0){let n=e.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new xe().fromArray(n)}return e.displacementMap!==void 0&&(this.displacementMap=t[e.displacementMap]||null),e.displacementScale!==void 0&&(this.displacementScale=e.displacementScale),e.displacementBias!==void 0&&(this.displacementBias=e.displacementBias),e.roughnessMap!==void 0&&(this.roughnessMap=t[e.roughnessMap]||null),e.metalnessMap!==void 0&&(this.metalnessMap=t[e.metalnessMap]||null),e.emissiveMap!==void 0&&(this.emissiveMap=t[e.emissiveMap]||null),e.emissiveIntensity!==void 0&&(this.emissiveIntensity=e.emissiveIntensity),e.specularMap!==void 0&&(this.specularMap=t[e.specularMap]||null),e.specularIntensityMap!==void 0&&(this.specularIntensityMap=t[e.specularIntensityMap]||null),e.specularColorMap!==void 0&&(this.specularColorMap=t[e.specularColorMap]||null),e.envMap!==void 0&&(this.envMap=t[e.envMap]||null),e.envMapRotation!==void 0&&this.envMapRotation.fromArray(e.envMapRotation),e.envMapIntensity!==void 0&&(this.envMapIntensity=e.envMapIntensity),e.reflectivity!==void 0&&(this.reflectivity=e.reflectivity),e.refractionRatio!==void 0&&(this.refractionRatio=e.refractionRatio),e.lightMap!==void 0&&(this.lightMap=t[e.lightMap]||null),e.lightMapIntensity!==void 0&&(this.lightMapIntensity=e.lightMapIntensity),e.aoMap!==void 0&&(this.aoMap=t[e.aoMap]||null),e.aoMapIntensity!==void 0&&(this.aoMapIntensity=e.aoMapIntensity),e.gradientMap!==void 0&&(this.gradientMap=t[e.gradientMap]||null),e.clearcoatMap!==void 0&&(this.clearcoatMap=t[e.clearcoatMap]||null),e.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=t[e.clearcoatRoughnessMap]||null),e.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=t[e.clearcoatNormalMap]||null),e.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new xe().fromArray(e.clearcoatNormalScale)),e.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=t[e.diffuseRoughnessMap]||null),e.iridescenceMap!==void 0&&(this.iridescenceMap=t[e.iridescenceMap]||null),e.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=t[e.iridescenceThicknessMap]||null),e.transmissionMap!==void 0&&(this.transmissionMap=t[e.transmissionMap]||null),e.thicknessMap!==void 0&&(this.thicknessMap=t[e.thicknessMap]||null),e.anisotropyMap!==void 0&&(this.anisotropyMap=t[e.anisotropyMap]||null),e.sheenColorMap!==void 0&&(this.sheenColorMap=t[e.sheenColorMap]||null),e.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=t[e.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(e){this.name=e.name,this.blending=e.blending,this.side=e.side,this.vertexColors=e.vertexColors,this.opacity=e.opacity,this.transparent=e.transparent,this.blendSrc=e.blendSrc,this.blendDst=e.blendDst,this.blendEquation=e.blendEquation,this.blendSrcAlpha=e.blendSrcAlpha,this.blendDstAlpha=e.blendDstAlpha,this.blendEquationAlpha=e.blendEquationAlpha,this.blendColor.copy(e.blendColor),this.blendAlpha=e.blendAlpha,this.depthFunc=e.depthFunc,this.depthTest=e.depthTest,this.depthWrite=e.depthWrite,this.stencilWriteMask=e.stencilWriteMask,this.stencilFunc=e.stencilFunc,this.stencilRef=e.stencilRef,this.stencilFuncMask=e.stencilFuncMask,this.stencilFail=e.stencilFail,this.stencilZFail=e.stencilZFail,this.stencilZPass=e.stencilZPass,this.stencilWrite=e.stencilWrite;let t=e.clippingPlanes,n=null;if(t!==null){let s=t.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=t[r].clone()}return this.clippingPlanes=n,this.clipIntersection=e.clipIntersection,this.clipShadows=e.clipShadows,this.shadowSide=e.shadowSide,this.colorWrite=e.colorWrite,this.precision=e.precision,this.polygonOffset=e.polygonOffset,this.polygonOffsetFactor=e.polygonOffsetFactor,this.polygonOffsetUnits=e.polygonOffsetUnits,this.dithering=e.dithering,this.alphaTest=e.alphaTest,this.alphaHash=e.alphaHash,this.alphaToCoverage=e.alphaToCoverage,this.premultipliedAlpha=e.premultipliedAlpha,this.forceSinglePass=e.forceSinglePass,this.allowOverride=e.allowOverride,this.visible=e.visible,this.toneMapped=e.toneMapped,this.userData=JSON.parse(JSON.stringify(e.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(e){e===!0&&this.version++}};var wi=new L,Rh=new L,Oa=new L,Fa=new L,hi=class{constructor(e=new L,t=new L(0,0,-1)){this.origin=e,this.direction=t}set(e,t){return this.origin.copy(e),this.direction.copy(t),this}copy(e){return this.origin.copy(e.origin),this.direction.copy(e.direction),this}at(e,t){return t.copy(this.origin).addScaledVector(this.direction,e)}lookAt(e){return this.direction.copy(e).sub(this.origin).normalize(),this}recast(e){return this.origin.copy(this.at(e,wi)),this}closestPointToPoint(e,t){t.subVectors(e,this.origin);let n=t.dot(this.direction);return n<0?t.copy(this.origin):t.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(e){return Math.sqrt(this.distanceSqToPoint(e))}distanceSqToPoint(e){let t=wi.subVectors(e,this.origin).dot(this.direction);return t<0?this.origin.distanceToSquared(e):(wi.copy(this.origin).addScaledVector(this.direction,t),wi.distanceToSquared(e))}distanceSqToSegment(e,t,n,s){Rh.copy(e).add(t).multiplyScalar(.5),Oa.copy(t).sub(e).normalize(),Fa.copy(this.origin).sub(Rh);let r=e.distanceTo(t)*.5,o=-this.direction.dot(Oa),a=Fa.dot(this.direction),c=-Fa.dot(Oa),l=Fa.lengthSq(),h=Math.abs(1-o*o),d,u,f,p;if(h>0)if(d=o*c-a,u=o*a-c,p=r*h,d>=0)if(u>=-p)if(u<=p){let _=1/h;d*=_,u*=_,f=d*(d+o*u+2*a)+u*(o*d+u+2*c)+l}else u=r,d=Math.max(0,-(o*u+a)),f=-d*d+u*(u+2*c)+l;else u=-r,d=Math.max(0,-(o*u+a)),f=-d*d+u*(u+2*c)+l;else u<=-p?(d=Math.max(0,-(-o*r+a)),u=d>0?-r:Math.min(Math.max(-r,-c),r),f=-d*d+u*(u+2*c)+l):u<=p?(d=0,u=Math.min(Math.max(-r,-c),r),f=u*(u+2*c)+l):(d=Math.max(0,-(o*r+a)),u=d>0?r:Math.min(Math.max(-r,-c),r),f=-d*d+u*(u+2*c)+l);else u=o>0?-r:r,d=Math.max(0,-(o*u+a)),f=-d*d+u*(u+2*c)+l;return n&&n.copy(this.origin).addScaledVector(this.direction,d),s&&s.copy(Rh).addScaledVector(Oa,u),f}intersectSphere(e,t){if(e.radius<0)return null;wi.subVectors(e.center,this.origin);let n=wi.dot(this.direction),s=wi.dot(wi)-n*n,r=e.radius*e.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,c=n+o;return c<0?null:a<0?this.at(c,t):this.at(a,t)}intersectsSphere(e){return e.radius<0?!1:this.distanceSqToPoint(e.center)<=e.radius*e.radius}distanceToPlane(e){let t=e.normal.dot(this.direction);if(t===0)return e.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(e.normal)+e.constant)/t;return n>=0?n:null}intersectPlane(e,t){let n=this.distanceToPlane(e);return n===null?null:this.at(n,t)}intersectsPlane(e){let t=e.distanceToPoint(this.origin);return t===0||e.normal.dot(this.direction)*t<0}intersectBox(e,t){let n,s,r,o,a,c,l=1/this.direction.x,h=1/this.direction.y,d=1/this.direction.z,u=this.origin;return l>=0?(n=(e.min.x-u.x)*l,s=(e.max.x-u.x)*l):(n=(e.max.x-u.x)*l,s=(e.min.x-u.x)*l),h>=0?(r=(e.min.y-u.y)*h,o=(e.max.y-u.y)*h):(r=(e.max.y-u.y)*h,o=(e.min.y-u.y)*h),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),d>=0?(a=(e.min.z-u.z)*d,c=(e.max.z-u.z)*d):(a=(e.max.z-u.z)*d,c=(e.min.z-u.z)*d),n>c||a>s)||((a>n||n!==n)&&(n=a),(c<s||s!==s)&&(s=c),s<0)?null:this.at(n>=0?n:s,t)}intersectsBox(e){return this.intersectBox(e,wi)!==null}intersectTriangle(e,t,n,s,r){let o=this.origin,a=this.direction,c=a.x,l=a.y,h=a.z,d=e.x-o.x,u=e.y-o.y,f=e.z-o.z,p=t.x-o.x,_=t.y-o.y,g=t.z-o.z,m=n.x-o.x,v=n.y-o.y,M=n.z-o.z,b=Math.abs(c),S=Math.abs(l),T=Math.abs(h),y,w,F,I,D,$,J,P,k,re,Y,me;if(b>=S&&b>=T?(F=c,$=d,k=p,me=m,c>=0?(y=l,w=h,I=u,D=f,J=_,P=g,re=v,Y=M):(y=h,w=l,I=f,D=u,J=g,P=_,re=M,Y=v)):S>=T?(F=l,$=u,k=_,me=v,l>=0?(y=h,w=c,I=f,D=d,J=g,P=p,re=M,Y=m):(y=c,w=h,I=d,D=f,J=p,P=g,re=m,Y=M)):(F=h,$=f,k=g,me=M,h>=0?(y=c,w=l,I=d,D=u,J=p,P=_,re=m,Y=v):(y=l,w=c,I=u,D=d,J=_,P=p,re=v,Y=m)),F===0)return null;let se=y/F,ce=w/F,ue=1/F,Pe=I-se*$,ne=D-ce*$,H=J-se*k,le=P-ce*k,we=re-se*me,Ue=Y-ce*me,Se=we*le-Ue*H,Oe=Pe*Ue-ne*we,ct=H*ne-le*Pe;if(s){if(Se<0||Oe<0||ct<0)return null}else if((Se<0||Oe<0||ct<0)&&(Se>0||Oe>0||ct>0))return null;let Xe=Se+Oe+ct;if(Xe===0)return null;let B=ue*(Se*$+Oe*k+ct*me);return(Xe>0?B<0:B>0)?null:this.at(B/Xe,r)}applyMatrix4(e){return this.origin.applyMatrix4(e),this.direction.transformDirection(e),this}equals(e){return e.origin.equals(this.origin)&&e.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},wn=class extends en{constructor(e){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new Ge(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ni,this.combine=Qo,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.specularMap=e.specularMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.combine=e.combine,this.reflectivity=e.reflectivity,this.refractionRatio=e.refractionRatio,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.fog=e.fog,this}},ep=new je,bs=new hi,Ba=new Sn,tp=new L,ka=new L,za=new L,Ha=new L,Ch=new L,Ga=new L,np=new L,Va=new L,Ut=class extends At{constructor(e=new Pt,t=new wn){super(),this.isMesh=!0,this.type="Mesh",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(e,t){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;t.fromBufferAttribute(s,e);let a=this.morphTargetInfluences;if(r&&a){Ga.set(0,0,0);for(let c=0,l=r.length;c<l;c++){let h=a[c],d=r[c];h!==0&&(Ch.fromBufferAttribute(d,e),o?Ga.addScaledVector(Ch,h):Ga.addScaledVector(Ch.sub(t),h))}t.add(Ga)}return t}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),Ba.copy(n.boundingSphere),Ba.applyMatrix4(r),bs.copy(e.ray).recast(e.near),!(Ba.containsPoint(bs.origin)===!1&&(bs.intersectSphere(Ba,tp)===null||bs.origin.distanceToSquared(tp)>(e.far-e.near)**2))&&(ep.copy(r).invert(),bs.copy(e.ray).applyMatrix4(ep),!(n.boundingBox!==null&&bs.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(e,t,bs)))}_computeIntersections(e,t,n){let s,r=this.geometry,o=this.material,a=r.index,c=r.attributes.position,l=r.attributes.uv,h=r.attributes.uv1,d=r.attributes.normal,u=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let p=0,_=u.length;p<_;p++){let g=u[p],m=o[g.materialIndex],v=Math.max(g.start,f.start),M=Math.min(a.count,Math.min(g.start+g.count,f.start+f.count));for(let b=v,S=M;b<S;b+=3){let T=a.getX(b),y=a.getX(b+1),w=a.getX(b+2);s=Wa(this,m,e,n,l,h,d,T,y,w),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=g.materialIndex,t.push(s))}}else{let p=Math.max(0,f.start),_=Math.min(a.count,f.start+f.count);for(let g=p,m=_;g<m;g+=3){let v=a.getX(g),M=a.getX(g+1),b=a.getX(g+2);s=Wa(this,o,e,n,l,h,d,v,M,b),s&&(s.faceIndex=Math.floor(g/3),t.push(s))}}else if(c!==void 0)if(Array.isArray(o))for(let p=0,_=u.length;p<_;p++){let g=u[p],m=o[g.materialIndex],v=Math.max(g.start,f.start),M=Math.min(c.count,Math.min(g.start+g.count,f.start+f.count));for(let b=v,S=M;b<S;b+=3){let T=b,y=b+1,w=b+2;s=Wa(this,m,e,n,l,h,d,T,y,w),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=g.materialIndex,t.push(s))}}else{let p=Math.max(0,f.start),_=Math.min(c.count,f.start+f.count);for(let g=p,m=_;g<m;g+=3){let v=g,M=g+1,b=g+2;s=Wa(this,o,e,n,l,h,d,v,M,b),s&&(s.faceIndex=Math.floor(g/3),t.push(s))}}}};function N_(i,e,t,n,s,r,o,a){let c;if(e.side===yn?c=n.intersectTriangle(o,r,s,!0,a):c=n.intersectTriangle(s,r,o,e.side===An,a),c===null)return null;Va.copy(a),Va.applyMatrix4(i.matrixWorld);let l=t.ray.origin.distanceTo(Va);return l<t.near||l>t.far?null:{distance:l,point:Va.clone(),object:i}}function Wa(i,e,t,n,s,r,o,a,c,l){i.getVertexPosition(a,ka),i.getVertexPosition(c,za),i.getVertexPosition(l,Ha);let h=N_(i,e,t,n,ka,za,Ha,np);if(h){let d=new L;Ei.getBarycoord(np,ka,za,Ha,d),s&&(h.uv=Ei.getInterpolatedAttribute(s,a,c,l,d,new xe)),r&&(h.uv1=Ei.getInterpolatedAttribute(r,a,c,l,d,new xe)),o&&(h.normal=Ei.getInterpolatedAttribute(o,a,c,l,d,new L),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let u={a,b:c,c:l,normal:new L,materialIndex:0};Ei.getNormal(ka,za,Ha,u.normal),h.face=u,h.barycoord=d}return h}var ao=new bt,ip=new bt,sp=new bt,D_=new bt,rp=new je,$a=new L,Ih=new Sn,op=new je,Ph=new hi,So=class extends Ut{constructor(e,t){super(e,t),this.isSkinnedMesh=!0,this.type="SkinnedMesh",this.bindMode=kh,this.bindMatrix=new je,this.bindMatrixInverse=new je,this.boundingBox=null,this.boundingSphere=null}computeBoundingBox(){let e=this.geometry;this.boundingBox===null&&(this.boundingBox=new Qt),this.boundingBox.makeEmpty();let t=e.getAttribute("position");for(let n=0;n<t.count;n++)this.getVertexPosition(n,$a),this.boundingBox.expandByPoint($a)}computeBoundingSphere(){let e=this.geometry;this.boundingSphere===null&&(this.boundingSphere=new Sn),this.boundingSphere.makeEmpty();let t=e.getAttribute("position");for(let n=0;n<t.count;n++)this.getVertexPosition(n,$a),this.boundingSphere.expandByPoint($a)}copy(e,t){return super.copy(e,t),this.bindMode=e.bindMode,this.bindMatrix.copy(e.bindMatrix),this.bindMatrixInverse.copy(e.bindMatrixInverse),this.skeleton=e.skeleton,this.boundingBox=e.boundingBox!==null?e.boundingBox.clone():null,this.boundingSphere=e.boundingSphere!==null?e.boundingSphere.clone():null,this}raycast(e,t){let n=this.material,s=this.matrixWorld;n!==void 0&&(this.boundingSphere===null&&this.computeBoundingSphere(),Ih.copy(this.boundingSphere),Ih.applyMatrix4(s),e.ray.intersectsSphere(Ih)!==!1&&(op.copy(s).invert(),Ph.copy(e.ray).applyMatrix4(op),!(this.boundingBox!==null&&Ph.intersectsBox(this.boundingBox)===!1)&&this._computeIntersections(e,t,Ph)))}getVertexPosition(e,t){return super.getVertexPosition(e,t),this.applyBoneTransform(e,t),t}bind(e,t){this.skeleton=e,t===void 0&&(this.updateMatrixWorld(!0),this.skeleton.calculateInverses(),t=this.matrixWorld),this.bindMatrix.copy(t),this.bindMatrixInverse.copy(t).invert()}pose(){this.skeleton.pose()}normalizeSkinWeights(){let e=new bt,t=this.geometry.attributes.skinWeight;for(let n=0,s=t.count;n<s;n++){e.fromBufferAttribute(t,n);let r=1/e.manhattanLength();r!==1/0?e.multiplyScalar(r):e.set(1,0,0,0),t.setXYZW(n,e.x,e.y,e.z,e.w)}}updateMatrixWorld(e){super.updateMatrixWorld(e),this.bindMode===kh?this.bindMatrixInverse.copy(this.matrixWorld).invert():this.bindMode===im?this.bindMatrixInverse.copy(this.bindMatrix).invert():We("SkinnedMesh: Unrecognized bindMode: "+this.bindMode)}applyBoneTransform(e,t){let n=this.skeleton,s=this.geometry;ip.fromBufferAttribute(s.attributes.skinIndex,e),sp.fromBufferAttribute(s.attributes.skinWeight,e),t.isVector4?(ao.copy(t),t.set(0,0,0,0)):(ao.set(t.x,t.y,t.z,1),t.set(0,0,0)),ao.applyMatrix4(this.bindMatrix);for(let r=0;r<4;r++){let o=sp.getComponent(r);if(o!==0){let a=ip.getComponent(r);rp.multiplyMatrices(n.bones[a].matrixWorld,n.boneInverses[a]),t.addScaledVector(D_.copy(ao).applyMatrix4(rp),o)}}return t.isVector4&&(t.w=ao.w),t.applyMatrix4(this.bindMatrixInverse)}},Sr=class extends At{constructor(){super(),this.isBone=!0,this.type="Bone"}},wr=class extends Wt{constructor(e=null,t=1,n=1,s,r,o,a,c,l=Dt,h=Dt,d,u){super(null,o,a,c,l,h,s,r,d,u),this.isDataTexture=!0,this.image={data:e,width:t,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}},ap=new je,U_=new je,wo=class i{constructor(e=[],t=[]){this.uuid=ri(),this.bones=e.slice(0),this.boneInverses=t,this.boneMatrices=null,this.previousBoneMatrices=null,this.boneTexture=null,this.previousBoneTexture=null,this.init()}init(){let e=this.bones,t=this.boneInverses;if(this.boneMatrices=new Float32Array(e.length*16),t.length===0)this.calculateInverses();else if(e.length!==t.length){We("Skeleton: Number of inverse bone matrices does not match amount of bones."),this.boneInverses=[];for(let n=0,s=this.bones.length;n<s;n++)this.boneInverses.push(new je)}}calculateInverses(){this.boneInverses.length=0;for(let e=0,t=this.bones.length;e<t;e++){let n=new je;this.bones[e]&&n.copy(this.bones[e].matrixWorld).invert(),this.boneInverses.push(n)}}pose(){for(let e=0,t=this.bones.length;e<t;e++){let n=this.bones[e];n&&n.matrixWorld.copy(this.boneInverses[e]).invert()}for(let e=0,t=this.bones.length;e<t;e++){let n=this.bones[e];n&&(n.parent&&n.parent.isBone?(n.matrix.copy(n.parent.matrixWorld).invert(),n.matrix.multiply(n.matrixWorld)):n.matrix.copy(n.matrixWorld),n.matrix.decompose(n.position,n.quaternion,n.scale))}}update(){let e=this.bones,t=this.boneInverses,n=this.boneMatrices,s=this.boneTexture;for(let r=0,o=e.length;r<o;r++){let a=e[r]?e[r].matrixWorld:U_;ap.multiplyMatrices(a,t[r]),ap.toArray(n,r*16)}s!==null&&(s.needsUpdate=!0)}clone(){return new i(this.bones,this.boneInverses)}computeBoneTexture(){let e=Math.sqrt(this.bones.length*4);e=Math.ceil(e/4)*4,e=Math.max(e,4);let t=new Float32Array(e*e*4);t.set(this.boneMatrices);let n=new wr(t,e,e,$n,Fn);return n.needsUpdate=!0,this.boneMatrices=t,this.boneTexture=n,this}getBoneByName(e){for(let t=0,n=this.bones.length;t<n;t++){let s=this.bones[t];if(s.name===e)return s}}dispose(){this.boneTexture!==null&&(this.boneTexture.dispose(),this.boneTexture=null),this.previousBoneTexture!==null&&(this.previousBoneTexture.dispose(),this.previousBoneTexture=null)}fromJSON(e,t){this.uuid=e.uuid;for(let n=0,s=e.bones.length;n<s;n++){let r=e.bones[n],o=t[r];o===void 0&&(We("Skeleton: No bone found with UUID:",r),o=new Sr),this.bones.push(o),this.boneInverses.push(new je().fromArray(e.boneInverses[n]))}return this.init(),this}toJSON(){let e={metadata:{version:4.7,type:"Skeleton",generator:"Skeleton.toJSON"},bones:[],boneInverses:[]};e.uuid=this.uuid;let t=this.bones,n=this.boneInverses;for(let s=0,r=t.length;s<r;s++){let o=t[s];e.bones.push(o.uuid);let a=n[s];e.boneInverses.push(a.toArray())}return e}},Ci=class extends Nt{constructor(e,t,n,s=1){super(e,t,n),this.isInstancedBufferAttribute=!0,this.meshPerAttribute=s}copy(e){return super.copy(e),this.meshPerAttribute=e.meshPerAttribute,this}toJSON(){let e=super.toJSON();return e.meshPerAttribute=this.meshPerAttribute,e.isInstancedBufferAttribute=!0,e}},ar=new je,lp=new je,Xa=[],cp=new Qt,O_=new je,lo=new Ut,co=new Sn,To=class extends Ut{constructor(e,t,n){super(e,t),this.isInstancedMesh=!0,this.instanceMatrix=new Ci(new Float32Array(n*16),16),this.instanceColor=null,this.morphTexture=null,this.count=n,this.boundingBox=null,this.boundingSphere=null;for(let s=0;s<n;s++)this.setMatrixAt(s,O_)}computeBoundingBox(){let e=this.geometry,t=this.count;this.boundingBox===null&&(this.boundingBox=new Qt),e.boundingBox===null&&e.computeBoundingBox(),this.boundingBox.makeEmpty();for(let n=0;n<t;n++)this.getMatrixAt(n,ar),cp.copy(e.boundingBox).applyMatrix4(ar),this.boundingBox.union(cp)}computeBoundingSphere(){let e=this.geometry,t=this.count;this.boundingSphere===null&&(this.boundingSphere=new Sn),e.boundingSphere===null&&e.computeBoundingSphere(),this.boundingSphere.makeEmpty();for(let n=0;n<t;n++)this.getMatrixAt(n,ar),co.copy(e.boundingSphere).applyMatrix4(ar),this.boundingSphere.union(co)}copy(e,t){return super.copy(e,t),this.instanceMatrix.copy(e.instanceMatrix),this.morphTexture=e.morphTexture!==null?e.morphTexture.clone():null,this.instanceColor=e.instanceColor!==null?e.instanceColor.clone():null,this.count=e.count,this.boundingBox=e.boundingBox!==null?e.boundingBox.clone():null,this.boundingSphere=e.boundingSphere!==null?e.boundingSphere.clone():null,this}getColorAt(e,t){return this.instanceColor===null?t.setRGB(1,1,1):t.fromArray(this.instanceColor.array,e*3)}getMatrixAt(e,t){return t.fromArray(this.instanceMatrix.array,e*16)}getMorphAt(e,t){let n=t.morphTargetInfluences,s=this.morphTexture.source.data.data,r=n.length+1,o=e*r+1;for(let a=0;a<n.length;a++)n[a]=s[o+a]}raycast(e,t){let n=this.matrixWorld,s=this.count;if(lo.geometry=this.geometry,lo.material=this.material,lo.material!==void 0&&(this.boundingSphere===null&&this.computeBoundingSphere(),co.copy(this.boundingSphere),co.applyMatrix4(n),e.ray.intersectsSphere(co)!==!1))for(let r=0;r<s;r++){this.getMatrixAt(r,ar),lp.multiplyMatrices(n,ar),lo.matrixWorld=lp,lo.raycast(e,Xa);for(let o=0,a=Xa.length;o<a;o++){let c=Xa[o];c.instanceId=r,c.object=this,t.push(c)}Xa.length=0}}setColorAt(e,t){return this.instanceColor===null&&(this.instanceColor=new Ci(new Float32Array(this.instanceMatrix.count*3).fill(1),3)),t.toArray(this.instanceColor.array,e*3),this}setMatrixAt(e,t){return t.toArray(this.instanceMatrix.array,e*16),this}setMorphAt(e,t){let n=t.morphTargetInfluences,s=n.length+1;this.morphTexture===null&&(this.morphTexture=new wr(new Float32Array(s*this.count),s,this.count,$l,Fn));let r=this.morphTexture.source.data.data,o=0;for(let l=0;l<n.length;l++)o+=n[l];let a=this.geometry.morphTargetsRelative?1:1-o,c=s*e;return r[c]=a,r.set(n,c+1),this}updateMorphTargets(){}dispose(){super.dispose(),this.instanceMatrix.dispose(),this.instanceColor!==null&&this.instanceColor.dispose(),this.morphTexture!==null&&(this.morphTexture.dispose(),this.morphTexture=null)}},Ms=new Sn,F_=new xe(.5,.5),qa=new L,Qi=class{constructor(e=new gn,t=new gn,n=new gn,s=new gn,r=new gn,o=new gn){this.planes=[e,t,n,s,r,o]}set(e,t,n,s,r,o){let a=this.planes;return a[0].copy(e),a[1].copy(t),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(e){let t=this.planes;for(let n=0;n<6;n++)t[n].copy(e.planes[n]);return this}setFromProjectionMatrix(e,t=Gn,n=!1){let s=this.planes,r=e.elements,o=r[0],a=r[1],c=r[2],l=r[3],h=r[4],d=r[5],u=r[6],f=r[7],p=r[8],_=r[9],g=r[10],m=r[11],v=r[12],M=r[13],b=r[14],S=r[15];if(s[0].setComponents(l-o,f-h,m-p,S-v).normalize(),s[1].setComponents(l+o,f+h,m+p,S+v).normalize(),s[2].setComponents(l+a,f+d,m+_,S+M).normalize(),s[3].setComponents(l-a,f-d,m-_,S-M).normalize(),n)s[4].setComponents(c,u,g,b).normalize(),s[5].setComponents(l-c,f-u,m-g,S-b).normalize();else if(s[4].setComponents(l-c,f-u,m-g,S-b).normalize(),t===Gn)s[5].setComponents(l+c,f+u,m+g,S+b).normalize();else if(t===mr)s[5].setComponents(c,u,g,b).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+t);return this}intersectsObject(e){if(e.boundingSphere!==void 0)e.boundingSphere===null&&e.computeBoundingSphere(),Ms.copy(e.boundingSphere).applyMatrix4(e.matrixWorld);else{let t=e.geometry;t.boundingSphere===null&&t.computeBoundingSphere(),Ms.copy(t.boundingSphere).applyMatrix4(e.matrixWorld)}return this.intersectsSphere(Ms)}intersectsSprite(e){Ms.center.set(0,0,0);let t=F_.distanceTo(e.center);return Ms.radius=.7071067811865476+t,Ms.applyMatrix4(e.matrixWorld),this.intersectsSphere(Ms)}intersectsSphere(e){let t=this.planes,n=e.center,s=-e.radius;for(let r=0;r<6;r++)if(t[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(e){let t=this.planes;for(let n=0;n<6;n++){let s=t[n];if(qa.x=s.normal.x>0?e.max.x:e.min.x,qa.y=s.normal.y>0?e.max.y:e.min.y,qa.z=s.normal.z>0?e.max.z:e.min.z,s.distanceToPoint(qa)<0)return!1}return!0}containsPoint(e){let t=this.planes;for(let n=0;n<6;n++)if(t[n].distanceToPoint(e)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},hp=new je,_l=class i{constructor(){this.coordinateSystem=Gn,this._frustums=[],this._count=0}setFromArrayCamera(e){let t=e.cameras,n=this._frustums;for(let s=0;s<t.length;s++){let r=t[s];hp.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new Qi),n[s].setFromProjectionMatrix(hp,r.coordinateSystem,r.reversedDepth)}return this._count=t.length,this}getFrustum(e){return this._frustums[e]}intersectsObject(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsObject(e))return!0;return!1}intersectsSprite(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsSprite(e))return!0;return!1}intersectsSphere(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsSphere(e))return!0;return!1}intersectsBox(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsBox(e))return!0;return!1}containsPoint(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].containsPoint(e))return!0;return!1}copy(e){this.coordinateSystem=e.coordinateSystem;let t=this._frustums,n=e._frustums;for(let s=0;s<e._count;s++)t[s]===void 0&&(t[s]=new Qi),t[s].copy(n[s]);return this._count=e._count,this}clone(){return new i().copy(this)}};var es=class extends en{constructor(e){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new Ge(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.linewidth=e.linewidth,this.linecap=e.linecap,this.linejoin=e.linejoin,this.fog=e.fog,this}},xl=new L,yl=new L,up=new je,ho=new hi,Ya=new Sn,Lh=new L,dp=new L,Rs=class extends At{constructor(e=new Pt,t=new es){super(),this.isLine=!0,this.type="Line",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,n=[0];for(let s=1,r=t.count;s<r;s++)xl.fromBufferAttribute(t,s-1),yl.fromBufferAttribute(t,s),n[s]=n[s-1],n[s]+=xl.distanceTo(yl);e.setAttribute("lineDistance",new Tt(n,1))}else We("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.matrixWorld,r=e.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),Ya.copy(n.boundingSphere),Ya.applyMatrix4(s),Ya.radius+=r,e.ray.intersectsSphere(Ya)===!1)return;up.copy(s).invert(),ho.copy(e.ray).applyMatrix4(up);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),c=a*a,l=this.isLineSegments?2:1,h=n.index,u=n.attributes.position;if(h!==null){let f=Math.max(0,o.start),p=Math.min(h.count,o.start+o.count);for(let _=f,g=p-1;_<g;_+=l){let m=h.getX(_),v=h.getX(_+1),M=ja(this,e,ho,c,m,v,_);M&&t.push(M)}if(this.isLineLoop){let _=h.getX(p-1),g=h.getX(f),m=ja(this,e,ho,c,_,g,p-1);m&&t.push(m)}}else{let f=Math.max(0,o.start),p=Math.min(u.count,o.start+o.count);for(let _=f,g=p-1;_<g;_+=l){let m=ja(this,e,ho,c,_,_+1,_);m&&t.push(m)}if(this.isLineLoop){let _=ja(this,e,ho,c,p-1,f,p-1);_&&t.push(_)}}}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function ja(i,e,t,n,s,r,o){let a=i.geometry.attributes.position;if(xl.fromBufferAttribute(a,s),yl.fromBufferAttribute(a,r),t.distanceSqToSegment(xl,yl,Lh,dp)>n)return;Lh.applyMatrix4(i.matrixWorld);let l=e.ray.origin.distanceTo(Lh);if(!(l<e.near||l>e.far))return{distance:l,point:dp.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var fp=new L,pp=new L,tn=class extends Rs{constructor(e,t){super(e,t),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,n=[];for(let s=0,r=t.count;s<r;s+=2)fp.fromBufferAttribute(t,s),pp.fromBufferAttribute(t,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+fp.distanceTo(pp);e.setAttribute("lineDistance",new Tt(n,1))}else We("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}},Cs=class extends Rs{constructor(e,t){super(e,t),this.isLineLoop=!0,this.type="LineLoop"}},Tr=class extends en{constructor(e){super(),this.isPointsMaterial=!0,this.type="PointsMaterial",this.color=new Ge(16777215),this.map=null,this.alphaMap=null,this.size=1,this.sizeAttenuation=!0,this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.alphaMap=e.alphaMap,this.size=e.size,this.sizeAttenuation=e.sizeAttenuation,this.fog=e.fog,this}},mp=new je,Wh=new hi,Ka=new Sn,Za=new L,Eo=class extends At{constructor(e=new Pt,t=new Tr){super(),this.isPoints=!0,this.type="Points",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.matrixWorld,r=e.params.Points.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),Ka.copy(n.boundingSphere),Ka.applyMatrix4(s),Ka.radius+=r,e.ray.intersectsSphere(Ka)===!1)return;mp.copy(s).invert(),Wh.copy(e.ray).applyMatrix4(mp);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),c=a*a,l=n.index,d=n.attributes.position;if(l!==null){let u=Math.max(0,o.start),f=Math.min(l.count,o.start+o.count);for(let p=u,_=f;p<_;p++){let g=l.getX(p);Za.fromBufferAttribute(d,g),gp(Za,g,c,s,e,t,this)}}else{let u=Math.max(0,o.start),f=Math.min(d.count,o.start+o.count);for(let p=u,_=f;p<_;p++)Za.fromBufferAttribute(d,p),gp(Za,p,c,s,e,t,this)}}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function gp(i,e,t,n,s,r,o){let a=Wh.distanceSqToPoint(i);if(a<t){let c=new L;Wh.closestPointToPoint(i,c),c.applyMatrix4(n);let l=s.ray.origin.distanceTo(c);if(l<s.near||l>s.far)return;r.push({distance:l,distanceToRay:Math.sqrt(a),point:c,index:e,face:null,faceIndex:null,barycoord:null,object:o})}}var Ao=class extends Wt{constructor(e=[],t=Fs,n,s,r,o,a,c,l,h){super(e,t,n,s,r,o,a,c,l,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(e){this.image=e}},Ro=class extends Wt{constructor(e,t,n,s,r,o,a,c,l){super(e,t,n,s,r,o,a,c,l),this.isCanvasTexture=!0,this.needsUpdate=!0}};var Ii=class extends Wt{constructor(e,t,n=ii,s,r,o,a=Dt,c=Dt,l,h=Ri,d=1){if(h!==Ri&&h!==Bi)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let u={width:e,height:t,depth:d};super(u,s,r,o,a,c,h,n,l),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(e){return super.copy(e),this.source=new xr(Object.assign({},e.image)),this.compareFunction=e.compareFunction,this}toJSON(e){let t=super.toJSON(e);return t.compareFunction=this.compareFunction,t}},Co=class extends Ii{constructor(e,t=ii,n=Fs,s,r,o=Dt,a=Dt,c,l=Ri){let h={width:e,height:e,depth:1},d=[h,h,h,h,h,h];super(e,e,t,n,s,r,o,a,c,l),this.image=d,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(e){this.image=e}},Io=class extends Wt{constructor(e=null){super(),this.sourceTexture=e,this.isExternalTexture=!0}copy(e){return super.copy(e),this.sourceTexture=e.sourceTexture,this}},Pi=class i extends Pt{constructor(e=1,t=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:e,height:t,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let c=[],l=[],h=[],d=[],u=0,f=0;p("z","y","x",-1,-1,n,t,e,o,r,0),p("z","y","x",1,-1,n,t,-e,o,r,1),p("x","z","y",1,1,e,n,t,s,o,2),p("x","z","y",1,-1,e,n,-t,s,o,3),p("x","y","z",1,-1,e,t,n,s,r,4),p("x","y","z",-1,-1,e,t,-n,s,r,5),this.setIndex(c),this.setAttribute("position",new Tt(l,3)),this.setAttribute("normal",new Tt(h,3)),this.setAttribute("uv",new Tt(d,2));function p(_,g,m,v,M,b,S,T,y,w,F){let I=b/y,D=S/w,$=b/2,J=S/2,P=T/2,k=y+1,re=w+1,Y=0,me=0,se=new L;for(let ce=0;ce<re;ce++){let ue=ce*D-J;for(let Pe=0;Pe<k;Pe++){let ne=Pe*I-$;se[_]=ne*v,se[g]=ue*M,se[m]=P,l.push(se.x,se.y,se.z),se[_]=0,se[g]=0,se[m]=T>0?1:-1,h.push(se.x,se.y,se.z),d.push(Pe/y),d.push(1-ce/w),Y+=1}}for(let ce=0;ce<w;ce++)for(let ue=0;ue<y;ue++){let Pe=u+ue+k*ce,ne=u+ue+k*(ce+1),H=u+(ue+1)+k*(ce+1),le=u+(ue+1)+k*ce;c.push(Pe,ne,le),c.push(ne,H,le),me+=6}a.addGroup(f,me,F),f+=me,u+=Y}}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.width,e.height,e.depth,e.widthSegments,e.heightSegments,e.depthSegments)}};var Ja=new L,Qa=new L,Nh=new L,el=new Ei,Tn=class extends Pt{constructor(e=null,t=1){if(super(),this.type="EdgesGeometry",this.parameters={geometry:e,thresholdAngle:t},e!==null){let s=Math.pow(10,4),r=Math.cos(ur*t),o=e.getIndex(),a=e.getAttribute("position"),c=o?o.count:a.count,l=[0,0,0],h=["a","b","c"],d=new Array(3),u=new Map,f=[];for(let p=0;p<c;p+=3){o?(l[0]=o.getX(p),l[1]=o.getX(p+1),l[2]=o.getX(p+2)):(l[0]=p,l[1]=p+1,l[2]=p+2);let{a:_,b:g,c:m}=el;if(_.fromBufferAttribute(a,l[0]),g.fromBufferAttribute(a,l[1]),m.fromBufferAttribute(a,l[2]),el.getNormal(Nh),d[0]=`${Math.round(_.x*s)},${Math.round(_.y*s)},${Math.round(_.z*s)}`,d[1]=`${Math.round(g.x*s)},${Math.round(g.y*s)},${Math.round(g.z*s)}`,d[2]=`${Math.round(m.x*s)},${Math.round(m.y*s)},${Math.round(m.z*s)}`,!(d[0]===d[1]||d[1]===d[2]||d[2]===d[0]))for(let v=0;v<3;v++){let M=(v+1)%3,b=d[v],S=d[M],T=el[h[v]],y=el[h[M]],w=`${b}_${S}`,F=`${S}_${b}`,I=u.get(F);I?(Nh.dot(I.normal)<=r&&(f.push(T.x,T.y,T.z),f.push(y.x,y.y,y.z)),u.set(F,null)):u.has(w)||u.set(w,{index0:l[v],index1:l[M],normal:Nh.clone()})}}for(let p of u.values())if(p){let{index0:_,index1:g}=p;Ja.fromBufferAttribute(a,_),Qa.fromBufferAttribute(a,g),f.push(Ja.x,Ja.y,Ja.z),f.push(Qa.x,Qa.y,Qa.z)}this.setAttribute("position",new Tt(f,3))}}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}},On=class{constructor(){this.type="Curve",this.arcLengthDivisions=200,this.needsUpdate=!1,this.cacheArcLengths=null}getPoint(){We("Curve: .getPoint() not implemented.")}getPointAt(e,t){let n=this.getUtoTmapping(e);return this.getPoint(n,t)}getPoints(e=5){let t=[];for(let n=0;n<=e;n++)t.push(this.getPoint(n/e));return t}getSpacedPoints(e=5){let t=[];for(let n=0;n<=e;n++)t.push(this.getPointAt(n/e));return t}getLength(){let e=this.getLengths();return e[e.length-1]}getLengths(e=this.arcLengthDivisions){if(this.cacheArcLengths&&this.cacheArcLengths.length===e+1&&!this.needsUpdate)return this.cacheArcLengths;this.needsUpdate=!1;let t=[],n,s=this.getPoint(0),r=0;t.push(0);for(let o=1;o<=e;o++)n=this.getPoint(o/e),r+=n.distanceTo(s),t.push(r),s=n;return this.cacheArcLengths=t,t}updateArcLengths(){this.needsUpdate=!0,this.getLengths()}getUtoTmapping(e,t=null){let n=this.getLengths(),s=0,r=n.length,o;t?o=t:o=e*n[r-1];let a=0,c=r-1,l;for(;a<=c;)if(s=Math.floor(a+(c-a)/2),l=n[s]-o,l<0)a=s+1;else if(l>0)c=s-1;else{c=s;break}if(s=c,n[s]===o)return s/(r-1);let h=n[s],u=n[s+1]-h,f=(o-h)/u;return(s+f)/(r-1)}getTangent(e,t){let s=e-1e-4,r=e+1e-4;s<0&&(s=0),r>1&&(r=1);let o=this.getPoint(s),a=this.getPoint(r),c=t||(o.isVector2?new xe:new L);return c.copy(a).sub(o).normalize(),c}getTangentAt(e,t){let n=this.getUtoTmapping(e);return this.getTangent(n,t)}computeFrenetFrames(e,t=!1){let n=new L,s=[],r=[],o=[],a=new L,c=new je;for(let f=0;f<=e;f++){let p=f/e;s[f]=this.getTangentAt(p,new L)}r[0]=new L,o[0]=new L;let l=Number.MAX_VALUE,h=Math.abs(s[0].x),d=Math.abs(s[0].y),u=Math.abs(s[0].z);h<=l&&(l=h,n.set(1,0,0)),d<=l&&(l=d,n.set(0,1,0)),u<=l&&n.set(0,0,1),a.crossVectors(s[0],n).normalize(),r[0].crossVectors(s[0],a),o[0].crossVectors(s[0],r[0]);for(let f=1;f<=e;f++){if(r[f]=r[f-1].clone(),o[f]=o[f-1].clone(),a.crossVectors(s[f-1],s[f]),a.length()>Number.EPSILON){a.normalize();let p=Math.acos(ot(s[f-1].dot(s[f]),-1,1));r[f].applyMatrix4(c.makeRotationAxis(a,p))}o[f].crossVectors(s[f],r[f])}if(t===!0){let f=Math.acos(ot(r[0].dot(r[e]),-1,1));f/=e,s[0].dot(a.crossVectors(r[0],r[e]))>0&&(f=-f);for(let p=1;p<=e;p++)r[p].applyMatrix4(c.makeRotationAxis(s[p],f*p)),o[p].crossVectors(s[p],r[p])}return{tangents:s,normals:r,binormals:o}}clone(){return new this.constructor().copy(this)}copy(e){return this.arcLengthDivisions=e.arcLengthDivisions,this.cacheArcLengths=null,this}toJSON(){let e={metadata:{version:4.7,type:"Curve",generator:"Curve.toJSON"}};return e.arcLengthDivisions=this.arcLengthDivisions,e.type=this.type,e}fromJSON(e){return this.arcLengthDivisions=e.arcLengthDivisions,this.cacheArcLengths=null,this}},Er=class extends On{constructor(e=0,t=0,n=1,s=1,r=0,o=Math.PI*2,a=!1,c=0){super(),this.isEllipseCurve=!0,this.type="EllipseCurve",this.aX=e,this.aY=t,this.xRadius=n,this.yRadius=s,this.aStartAngle=r,this.aEndAngle=o,this.aClockwise=a,this.aRotation=c}getPoint(e,t=new xe){let n=t,s=Math.PI*2,r=this.aEndAngle-this.aStartAngle,o=Math.abs(r)<Number.EPSILON;for(;r<0;)r+=s;for(;r>s;)r-=s;r<Number.EPSILON&&(o?r=0:r=s),this.aClockwise===!0&&!o&&(r===s?r=-s:r=r-s);let a=this.aStartAngle+e*r,c=this.aX+this.xRadius*Math.cos(a),l=this.aY+this.yRadius*Math.sin(a);if(this.aRotation!==0){let h=Math.cos(this.aRotation),d=Math.sin(this.aRotation),u=c-this.aX,f=l-this.aY;c=u*h-f*d+this.aX,l=u*d+f*h+this.aY}return n.set(c,l)}copy(e){return super.copy(e),this.aX=e.aX,this.aY=e.aY,this.xRadius=e.xRadius,this.yRadius=e.yRadius,this.aStartAngle=e.aStartAngle,this.aEndAngle=e.aEndAngle,this.aClockwise=e.aClockwise,this.aRotation=e.aRotation,this}toJSON(){let e=super.toJSON();return e.aX=this.aX,e.aY=this.aY,e.xRadius=this.xRadius,e.yRadius=this.yRadius,e.aStartAngle=this.aStartAngle,e.aEndAngle=this.aEndAngle,e.aClockwise=this.aClockwise,e.aRotation=this.aRotation,e}fromJSON(e){return super.fromJSON(e),this.aX=e.aX,this.aY=e.aY,this.xRadius=e.xRadius,this.yRadius=e.yRadius,this.aStartAngle=e.aStartAngle,this.aEndAngle=e.aEndAngle,this.aClockwise=e.aClockwise,this.aRotation=e.aRotation,this}},vl=class extends Er{constructor(e,t,n,s,r,o){super(e,t,n,n,s,r,o),this.isArcCurve=!0,this.type="ArcCurve"}};function Lu(){let i=0,e=0,t=0,n=0;function s(r,o,a,c){i=r,e=a,t=-3*r+3*o-2*a-c,n=2*r-2*o+a+c}return{initCatmullRom:function(r,o,a,c,l){s(o,a,l*(a-r),l*(c-o))},initNonuniformCatmullRom:function(r,o,a,c,l,h,d){let u=(o-r)/l-(a-r)/(l+h)+(a-o)/h,f=(a-o)/h-(c-o)/(h+d)+(c-a)/d;u*=h,f*=h,s(o,a,u,f)},calc:function(r){let o=r*r,a=o*r;return i+e*r+t*o+n*a}}}var _p=new L,xp=new L,Dh=new Lu,Uh=new Lu,Oh=new Lu,bl=class extends On{constructor(e=[],t=!1,n="centripetal",s=.5){super(),this.isCatmullRomCurve3=!0,this.type="CatmullRomCurve3",this.points=e,this.closed=t,this.curveType=n,this.tension=s}getPoint(e,t=new L){let n=t,s=this.points,r=s.length,o=(r-(this.closed?0:1))*e,a=Math.floor(o),c=o-a;this.closed?a+=a>0?0:(Math.floor(Math.abs(a)/r)+1)*r:c===0&&a===r-1&&(a=r-2,c=1);let l,h;this.closed||a>0?l=s[(a-1)%r]:(xp.subVectors(s[0],s[1]).add(s[0]),l=xp);let d=s[a%r],u=s[(a+1)%r];if(this.closed||a+2<r?h=s[(a+2)%r]:(_p.subVectors(s[r-1],s[r-2]).add(s[r-1]),h=_p),this.curveType==="centripetal"||this.curveType==="chordal"){let f=this.curveType==="chordal"?.5:.25,p=Math.pow(l.distanceToSquared(d),f),_=Math.pow(d.distanceToSquared(u),f),g=Math.pow(u.distanceToSquared(h),f);_<1e-4&&(_=1),p<1e-4&&(p=_),g<1e-4&&(g=_),Dh.initNonuniformCatmullRom(l.x,d.x,u.x,h.x,p,_,g),Uh.initNonuniformCatmullRom(l.y,d.y,u.y,h.y,p,_,g),Oh.initNonuniformCatmullRom(l.z,d.z,u.z,h.z,p,_,g)}else this.curveType==="catmullrom"&&(Dh.initCatmullRom(l.x,d.x,u.x,h.x,this.tension),Uh.initCatmullRom(l.y,d.y,u.y,h.y,this.tension),Oh.initCatmullRom(l.z,d.z,u.z,h.z,this.tension));return n.set(Dh.calc(c),Uh.calc(c),Oh.calc(c)),n}copy(e){super.copy(e),this.points=[];for(let t=0,n=e.points.length;t<n;t++){let s=e.points[t];this.points.push(s.clone())}return this.closed=e.closed,this.curveType=e.curveType,this.tension=e.tension,this}toJSON(){let e=super.toJSON();e.points=[];for(let t=0,n=this.points.length;t<n;t++){let s=this.points[t];e.points.push(s.toArray())}return e.closed=this.closed,e.curveType=this.curveType,e.tension=this.tension,e}fromJSON(e){super.fromJSON(e),this.points=[];for(let t=0,n=e.points.length;t<n;t++){let s=e.points[t];this.points.push(new L().fromArray(s))}return this.closed=e.closed,this.curveType=e.curveType,this.tension=e.tension,this}};function yp(i,e,t,n,s){let r=(n-e)*.5,o=(s-t)*.5,a=i*i,c=i*a;return(2*t-2*n+r+o)*c+(-3*t+3*n-2*r-o)*a+r*i+t}function B_(i,e){let t=1-i;return t*t*e}function k_(i,e){return 2*(1-i)*i*e}function z_(i,e){return i*i*e}function mo(i,e,t,n){return B_(i,e)+k_(i,t)+z_(i,n)}function H_(i,e){let t=1-i;return t*t*t*e}function G_(i,e){let t=1-i;return 3*t*t*i*e}function V_(i,e){return 3*(1-i)*i*i*e}function W_(i,e){return i*i*i*e}function go(i,e,t,n,s){return H_(i,e)+G_(i,t)+V_(i,n)+W_(i,s)}var Po=class extends On{constructor(e=new xe,t=new xe,n=new xe,s=new xe){super(),this.isCubicBezierCurve=!0,this.type="CubicBezierCurve",this.v0=e,this.v1=t,this.v2=n,this.v3=s}getPoint(e,t=new xe){let n=t,s=this.v0,r=this.v1,o=this.v2,a=this.v3;return n.set(go(e,s.x,r.x,o.x,a.x),go(e,s.y,r.y,o.y,a.y)),n}copy(e){return super.copy(e),this.v0.copy(e.v0),this.v1.copy(e.v1),this.v2.copy(e.v2),this.v3.copy(e.v3),this}toJSON(){let e=super.toJSON();return e.v0=this.v0.toArray(),e.v1=this.v1.toArray(),e.v2=this.v2.toArray(),e.v3=this.v3.toArray(),e}fromJSON(e){return super.fromJSON(e),this.v0.fromArray(e.v0),this.v1.fromArray(e.v1),this.v2.fromArray(e.v2),this.v3.fromArray(e.v3),this}},Ml=class extends On{constructor(e=new L,t=new L,n=new L,s=new L){super(),this.isCubicBezierCurve3=!0,this.type="CubicBezierCurve3",this.v0=e,this.v1=t,this.v2=n,this.v3=s}getPoint(e,t=new L){let n=t,s=this.v0,r=this.v1,o=this.v2,a=this.v3;return n.set(go(e,s.x,r.x,o.x,a.x),go(e,s.y,r.y,o.y,a.y),go(e,s.z,r.z,o.z,a.z)),n}copy(e){return super.copy(e),this.v0.copy(e.v0),this.v1.copy(e.v1),this.v2.copy(e.v2),this.v3.copy(e.v3),this}toJSON(){let e=super.toJSON();return e.v0=this.v0.toArray(),e.v1=this.v1.toArray(),e.v2=this.v2.toArray(),e.v3=this.v3.toArray(),e}fromJSON(e){return super.fromJSON(e),this.v0.fromArray(e.v0),this.v1.fromArray(e.v1),this.v2.fromArray(e.v2),this.v3.fromArray(e.v3),this}},Lo=class extends On{constructor(e=new xe,t=new xe){super(),this.isLineCurve=!0,this.type="LineCurve",this.v1=e,this.v2=t}getPoint(e,t=new xe){let n=t;return e===1?n.copy(this.v2):(n.copy(this.v2).sub(this.v1),n.multiplyScalar(e).add(this.v1)),n}getPointAt(e,t){return this.getPoint(e,t)}getTangent(e,t=new xe){return t.subVectors(this.v2,this.v1).normalize()}getTangentAt(e,t){return this.getTangent(e,t)}copy(e){return super.copy(e),this.v1.copy(e.v1),this.v2.copy(e.v2),this}toJSON(){let e=super.toJSON();return e.v1=this.v1.toArray(),e.v2=this.v2.toArray(),e}fromJSON(e){return super.fromJSON(e),this.v1.fromArray(e.v1),this.v2.fromArray(e.v2),this}},Sl=class extends On{constructor(e=new L,t=new L){super(),this.isLineCurve3=!0,this.type="LineCurve3",this.v1=e,this.v2=t}getPoint(e,t=new L){let n=t;return e===1?n.copy(this.v2):(n.copy(this.v2).sub(this.v1),n.multiplyScalar(e).add(this.v1)),n}getPointAt(e,t){return this.getPoint(e,t)}getTangent(e,t=new L){return t.subVectors(this.v2,this.v1).normalize()}getTangentAt(e,t){return this.getTangent(e,t)}copy(e){return super.copy(e),this.v1.copy(e.v1),this.v2.copy(e.v2),this}toJSON(){let e=super.toJSON();return e.v1=this.v1.toArray(),e.v2=this.v2.toArray(),e}fromJSON(e){return super.fromJSON(e),this.v1.fromArray(e.v1),this.v2.fromArray(e.v2),this}},No=class extends On{constructor(e=new xe,t=new xe,n=new xe){super(),this.isQuadraticBezierCurve=!0,this.type="QuadraticBezierCurve",this.v0=e,this.v1=t,this.v2=n}getPoint(e,t=new xe){let n=t,s=this.v0,r=this.v1,o=this.v2;return n.set(mo(e,s.x,r.x,o.x),mo(e,s.y,r.y,o.y)),n}copy(e){return super.copy(e),this.v0.copy(e.v0),this.v1.copy(e.v1),this.v2.copy(e.v2),this}toJSON(){let e=super.toJSON();return e.v0=this.v0.toArray(),e.v1=this.v1.toArray(),e.v2=this.v2.toArray(),e}fromJSON(e){return super.fromJSON(e),this.v0.fromArray(e.v0),this.v1.fromArray(e.v1),this.v2.fromArray(e.v2),this}},wl=class extends On{constructor(e=new L,t=new L,n=new L){super(),this.isQuadraticBezierCurve3=!0,this.type="QuadraticBezierCurve3",this.v0=e,this.v1=t,this.v2=n}getPoint(e,t=new L){let n=t,s=this.v0,r=this.v1,o=this.v2;return n.set(mo(e,s.x,r.x,o.x),mo(e,s.y,r.y,o.y),mo(e,s.z,r.z,o.z)),n}copy(e){return super.copy(e),this.v0.copy(e.v0),this.v1.copy(e.v1),this.v2.copy(e.v2),this}toJSON(){let e=super.toJSON();return e.v0=this.v0.toArray(),e.v1=this.v1.toArray(),e.v2=this.v2.toArray(),e}fromJSON(e){return super.fromJSON(e),this.v0.fromArray(e.v0),this.v1.fromArray(e.v1),this.v2.fromArray(e.v2),this}},Do=class extends On{constructor(e=[]){super(),this.isSplineCurve=!0,this.type="SplineCurve",this.points=e}getPoint(e,t=new xe){let n=t,s=this.points,r=(s.length-1)*e,o=Math.floor(r),a=r-o,c=s[o===0?o:o-1],l=s[o],h=s[o>s.length-2?s.length-1:o+1],d=s[o>s.length-3?s.length-1:o+2];return n.set(yp(a,c.x,l.x,h.x,d.x),yp(a,c.y,l.y,h.y,d.y)),n}copy(e){super.copy(e),this.points=[];for(let t=0,n=e.points.length;t<n;t++){let s=e.points[t];this.points.push(s.clone())}return this}toJSON(){let e=super.toJSON();e.points=[];for(let t=0,n=this.points.length;t<n;t++){let s=this.points[t];e.points.push(s.toArray())}return e}fromJSON(e){super.fromJSON(e),this.points=[];for(let t=0,n=e.points.length;t<n;t++){let s=e.points[t];this.points.push(new xe().fromArray(s))}return this}},$h=Object.freeze({__proto__:null,ArcCurve:vl,CatmullRomCurve3:bl,CubicBezierCurve:Po,CubicBezierCurve3:Ml,EllipseCurve:Er,LineCurve:Lo,LineCurve3:Sl,QuadraticBezierCurve:No,QuadraticBezierCurve3:wl,SplineCurve:Do}),Tl=class extends On{constructor(){super(),this.type="CurvePath",this.curves=[],this.autoClose=!1,this.cacheLengths=null}add(e){this.curves.push(e)}closePath(){let e=this.curves[0].getPoint(0),t=this.curves[this.curves.length-1].getPoint(1);if(!e.equals(t)){let n=e.isVector2===!0?"LineCurve":"LineCurve3";this.curves.push(new $h[n](t,e))}return this}getPoint(e,t){let n=e*this.getLength(),s=this.getCurveLengths(),r=0;for(;r<s.length;){if(s[r]>=n){let o=s[r]-n,a=this.curves[r],c=a.getLength(),l=c===0?0:1-o/c;return a.getPointAt(l,t)}r++}return null}getLength(){let e=this.getCurveLengths();return e[e.length-1]}updateArcLengths(){this.needsUpdate=!0,this.cacheLengths=null,this.getCurveLengths()}getCurveLengths(){if(this.cacheLengths&&this.cacheLengths.length===this.curves.length)return this.cacheLengths;let e=[],t=0;for(let n=0,s=this.curves.length;n<s;n++)t+=this.curves[n].getLength(),e.push(t);return this.cacheLengths=e,e}getSpacedPoints(e=40){let t=[];for(let n=0;n<=e;n++)t.push(this.getPoint(n/e));return this.autoClose&&t.push(t[0]),t}getPoints(e=12){let t=[],n;for(let s=0,r=this.curves;s<r.length;s++){let o=r[s],a=o.isEllipseCurve?e*2:o.isLineCurve||o.isLineCurve3?1:o.isSplineCurve?e*o.points.length:e,c=o.getPoints(a);for(let l=0;l<c.length;l++){let h=c[l];n&&n.equals(h)||(t.push(h),n=h)}}return this.autoClose&&t.length>1&&!t[t.length-1].equals(t[0])&&t.push(t[0]),t}copy(e){super.copy(e),this.curves=[];for(let t=0,n=e.curves.length;t<n;t++){let s=e.curves[t];this.curves.push(s.clone())}return this.autoClose=e.autoClose,this.cacheLengths=null,this}toJSON(){let e=super.toJSON();e.autoClose=this.autoClose,e.curves=[];for(let t=0,n=this.curves.length;t<n;t++){let s=this.curves[t];e.curves.push(s.toJSON())}return e}fromJSON(e){super.fromJSON(e),this.autoClose=e.autoClose,this.curves=[];for(let t=0,n=e.curves.length;t<n;t++){let s=e.curves[t];this.curves.push(new $h[s.type]().fromJSON(s))}return this.cacheLengths=null,this}},Uo=class extends Tl{constructor(e){super(),this.type="Path",this.currentPoint=new xe,e&&this.setFromPoints(e)}setFromPoints(e){this.moveTo(e[0].x,e[0].y);for(let t=1,n=e.length;t<n;t++)this.lineTo(e[t].x,e[t].y);return this}moveTo(e,t){return this.currentPoint.set(e,t),this}lineTo(e,t){let n=new Lo(this.currentPoint.clone(),new xe(e,t));return this.curves.push(n),this.currentPoint.set(e,t),this}quadraticCurveTo(e,t,n,s){let r=new No(this.currentPoint.clone(),new xe(e,t),new xe(n,s));return this.curves.push(r),this.currentPoint.set(n,s),this}bezierCurveTo(e,t,n,s,r,o){let a=new Po(this.currentPoint.clone(),new xe(e,t),new xe(n,s),new xe(r,o));return this.curves.push(a),this.currentPoint.set(r,o),this}splineThru(e){let t=[this.currentPoint.clone()].concat(e),n=new Do(t);return this.curves.push(n),this.currentPoint.copy(e[e.length-1]),this}arc(e,t,n,s,r,o){let a=this.currentPoint.x,c=this.currentPoint.y;return this.absarc(e+a,t+c,n,s,r,o),this}absarc(e,t,n,s,r,o){return this.absellipse(e,t,n,n,s,r,o),this}ellipse(e,t,n,s,r,o,a,c){let l=this.currentPoint.x,h=this.currentPoint.y;return this.absellipse(e+l,t+h,n,s,r,o,a,c),this}absellipse(e,t,n,s,r,o,a,c){let l=new Er(e,t,n,s,r,o,a,c);if(this.curves.length>0){let d=l.getPoint(0);d.equals(this.currentPoint)||this.lineTo(d.x,d.y)}this.curves.push(l);let h=l.getPoint(1);return this.currentPoint.copy(h),this}copy(e){return super.copy(e),this.currentPoint.copy(e.currentPoint),this}toJSON(){let e=super.toJSON();return e.currentPoint=this.currentPoint.toArray(),e}fromJSON(e){return super.fromJSON(e),this.currentPoint.fromArray(e.currentPoint),this}},Li=class extends Uo{constructor(e){super(e),this.uuid=ri(),this.type="Shape",this.holes=[]}getPointsHoles(e){let t=[];for(let n=0,s=this.holes.length;n<s;n++)t[n]=this.holes[n].getPoints(e);return t}extractPoints(e){return{shape:this.getPoints(e),holes:this.getPointsHoles(e)}}copy(e){super.copy(e),this.holes=[];for(let t=0,n=e.holes.length;t<n;t++){let s=e.holes[t];this.holes.push(s.clone())}return this}toJSON(){let e=super.toJSON();e.uuid=this.uuid,e.holes=[];for(let t=0,n=this.holes.length;t<n;t++){let s=this.holes[t];e.holes.push(s.toJSON())}return e}fromJSON(e){super.fromJSON(e),this.uuid=e.uuid,this.holes=[];for(let t=0,n=e.holes.length;t<n;t++){let s=e.holes[t];this.holes.push(new Uo().fromJSON(s))}return this}};function $_(i,e,t=2){let n=e&&e.length,s=n?e[0]*t:i.length,r=xm(i,0,s,t,!0),o=[];if(!r||r.next===r.prev)return o;let a,c,l;if(n&&(r=K_(i,e,r,t)),i.length>80*t){a=i[0],c=i[1];let h=a,d=c;for(let u=t;u<s;u+=t){let f=i[u],p=i[u+1];f<a&&(a=f),p<c&&(c=p),f>h&&(h=f),p>d&&(d=p)}l=Math.max(h-a,d-c),l=l!==0?32767/l:0}return Oo(r,o,t,a,c,l,0),o}function xm(i,e,t,n,s){let r;if(s===ax(i,e,t,n)>0)for(let o=e;o<t;o+=n)r=vp(o/n|0,i[o],i[o+1],r);else for(let o=t-n;o>=e;o-=n)r=vp(o/n|0,i[o],i[o+1],r);return r&&Ar(r,r.next)&&(Bo(r),r=r.next),r}function Is(i,e){if(!i)return i;e||(e=i);let t=i,n;do if(n=!1,!t.steiner&&(Ar(t,t.next)||It(t.prev,t,t.next)===0)){if(Bo(t),t=e=t.prev,t===t.next)break;n=!0}else t=t.next;while(n||t!==e);return e}function Oo(i,e,t,n,s,r,o){if(!i)return;!o&&r&&tx(i,n,s,r);let a=i;for(;i.prev!==i.next;){let c=i.prev,l=i.next;if(r?q_(i,n,s,r):X_(i)){e.push(c.i,i.i,l.i),Bo(i),i=l.next,a=l.next;continue}if(i=l,i===a){o?o===1?(i=Y_(Is(i),e),Oo(i,e,t,n,s,r,2)):o===2&&j_(i,e,t,n,s,r):Oo(Is(i),e,t,n,s,r,1);break}}}function X_(i){let e=i.prev,t=i,n=i.next;if(It(e,t,n)>=0)return!1;let s=e.x,r=t.x,o=n.x,a=e.y,c=t.y,l=n.y,h=Math.min(s,r,o),d=Math.min(a,c,l),u=Math.max(s,r,o),f=Math.max(a,c,l),p=n.next;for(;p!==e;){if(p.x>=h&&p.x<=u&&p.y>=d&&p.y<=f&&uo(s,a,r,c,o,l,p.x,p.y)&&It(p.prev,p,p.next)>=0)return!1;p=p.next}return!0}function q_(i,e,t,n){let s=i.prev,r=i,o=i.next;if(It(s,r,o)>=0)return!1;let a=s.x,c=r.x,l=o.x,h=s.y,d=r.y,u=o.y,f=Math.min(a,c,l),p=Math.min(h,d,u),_=Math.max(a,c,l),g=Math.max(h,d,u),m=Xh(f,p,e,t,n),v=Xh(_,g,e,t,n),M=i.prevZ,b=i.nextZ;for(;M&&M.z>=m&&b&&b.z<=v;){if(M.x>=f&&M.x<=_&&M.y>=p&&M.y<=g&&M!==s&&M!==o&&uo(a,h,c,d,l,u,M.x,M.y)&&It(M.prev,M,M.next)>=0||(M=M.prevZ,b.x>=f&&b.x<=_&&b.y>=p&&b.y<=g&&b!==s&&b!==o&&uo(a,h,c,d,l,u,b.x,b.y)&&It(b.prev,b,b.next)>=0))return!1;b=b.nextZ}for(;M&&M.z>=m;){if(M.x>=f&&M.x<=_&&M.y>=p&&M.y<=g&&M!==s&&M!==o&&uo(a,h,c,d,l,u,M.x,M.y)&&It(M.prev,M,M.next)>=0)return!1;M=M.prevZ}for(;b&&b.z<=v;){if(b.x>=f&&b.x<=_&&b.y>=p&&b.y<=g&&b!==s&&b!==o&&uo(a,h,c,d,l,u,b.x,b.y)&&It(b.prev,b,b.next)>=0)return!1;b=b.nextZ}return!0}function Y_(i,e){let t=i;do{let n=t.prev,s=t.next.next;!Ar(n,s)&&vm(n,t,t.next,s)&&Fo(n,s)&&Fo(s,n)&&(e.push(n.i,t.i,s.i),Bo(t),Bo(t.next),t=i=s),t=t.next}while(t!==i);return Is(t)}function j_(i,e,t,n,s,r){let o=i;do{let a=o.next.next;for(;a!==o.prev;){if(o.i!==a.i&&sx(o,a)){let c=bm(o,a);o=Is(o,o.next),c=Is(c,c.next),Oo(o,e,t,n,s,r,0),Oo(c,e,t,n,s,r,0);return}a=a.next}o=o.next}while(o!==i)}function K_(i,e,t,n){let s=[];for(let r=0,o=e.length;r<o;r++){let a=e[r]*n,c=r<o-1?e[r+1]*n:i.length,l=xm(i,a,c,n,!1);l===l.next&&(l.steiner=!0),s.push(ix(l))}s.sort(Z_);for(let r=0;r<s.length;r++)t=J_(s[r],t);return t}function Z_(i,e){let t=i.x-e.x;if(t===0&&(t=i.y-e.y,t===0)){let n=(i.next.y-i.y)/(i.next.x-i.x),s=(e.next.y-e.y)/(e.next.x-e.x);t=n-s}return t}function J_(i,e){let t=Q_(i,e);if(!t)return e;let n=bm(t,i);return Is(n,n.next),Is(t,t.next)}function Q_(i,e){let t=e,n=i.x,s=i.y,r=-1/0,o;if(Ar(i,t))return t;do{if(Ar(i,t.next))return t.next;if(s<=t.y&&s>=t.next.y&&t.next.y!==t.y){let d=t.x+(s-t.y)*(t.next.x-t.x)/(t.next.y-t.y);if(d<=n&&d>r&&(r=d,o=t.x<t.next.x?t:t.next,d===n))return o}t=t.next}while(t!==e);if(!o)return null;let a=o,c=o.x,l=o.y,h=1/0;t=o;do{if(n>=t.x&&t.x>=c&&n!==t.x&&ym(s<l?n:r,s,c,l,s<l?r:n,s,t.x,t.y)){let d=Math.abs(s-t.y)/(n-t.x);Fo(t,i)&&(d<h||d===h&&(t.x>o.x||t.x===o.x&&ex(o,t)))&&(o=t,h=d)}t=t.next}while(t!==a);return o}function ex(i,e){return It(i.prev,i,e.prev)<0&&It(e.next,i,i.next)<0}function tx(i,e,t,n){let s=i;do s.z===0&&(s.z=Xh(s.x,s.y,e,t,n)),s.prevZ=s.prev,s.nextZ=s.next,s=s.next;while(s!==i);s.prevZ.nextZ=null,s.prevZ=null,nx(s)}function nx(i){let e,t=1;do{let n=i,s;i=null;let r=null;for(e=0;n;){e++;let o=n,a=0;for(let l=0;l<t&&(a++,o=o.nextZ,!!o);l++);let c=t;for(;a>0||c>0&&o;)a!==0&&(c===0||!o||n.z<=o.z)?(s=n,n=n.nextZ,a--):(s=o,o=o.nextZ,c--),r?r.nextZ=s:i=s,s.prevZ=r,r=s;n=o}r.nextZ=null,t*=2}while(e>1);return i}function Xh(i,e,t,n,s){return i=(i-t)*s|0,e=(e-n)*s|0,i=(i|i<<8)&16711935,i=(i|i<<4)&252645135,i=(i|i<<2)&858993459,i=(i|i<<1)&1431655765,e=(e|e<<8)&16711935,e=(e|e<<4)&252645135,e=(e|e<<2)&858993459,e=(e|e<<1)&1431655765,i|e<<1}function ix(i){let e=i,t=i;do(e.x<t.x||e.x===t.x&&e.y<t.y)&&(t=e),e=e.next;while(e!==i);return t}function ym(i,e,t,n,s,r,o,a){return(s-o)*(e-a)>=(i-o)*(r-a)&&(i-o)*(n-a)>=(t-o)*(e-a)&&(t-o)*(r-a)>=(s-o)*(n-a)}function uo(i,e,t,n,s,r,o,a){return!(i===o&&e===a)&&ym(i,e,t,n,s,r,o,a)}function sx(i,e){return i.next.i!==e.i&&i.prev.i!==e.i&&!rx(i,e)&&(Fo(i,e)&&Fo(e,i)&&ox(i,e)&&(It(i.prev,i,e.prev)||It(i,e.prev,e))||Ar(i,e)&&It(i.prev,i,i.next)>0&&It(e.prev,e,e.next)>0)}function It(i,e,t){return(e.y-i.y)*(t.x-e.x)-(e.x-i.x)*(t.y-e.y)}function Ar(i,e){return i.x===e.x&&i.y===e.y}function vm(i,e,t,n){let s=nl(It(i,e,t)),r=nl(It(i,e,n)),o=nl(It(t,n,i)),a=nl(It(t,n,e));return!!(s!==r&&o!==a||s===0&&tl(i,t,e)||r===0&&tl(i,n,e)||o===0&&tl(t,i,n)||a===0&&tl(t,e,n))}function tl(i,e,t){return e.x<=Math.max(i.x,t.x)&&e.x>=Math.min(i.x,t.x)&&e.y<=Math.max(i.y,t.y)&&e.y>=Math.min(i.y,t.y)}function nl(i){return i>0?1:i<0?-1:0}function rx(i,e){let t=i;do{if(t.i!==i.i&&t.next.i!==i.i&&t.i!==e.i&&t.next.i!==e.i&&vm(t,t.next,i,e))return!0;t=t.next}while(t!==i);return!1}function Fo(i,e){return It(i.prev,i,i.next)<0?It(i,e,i.next)>=0&&It(i,i.prev,e)>=0:It(i,e,i.prev)<0||It(i,i.next,e)<0}function ox(i,e){let t=i,n=!1,s=(i.x+e.x)/2,r=(i.y+e.y)/2;do t.y>r!=t.next.y>r&&t.next.y!==t.y&&s<(t.next.x-t.x)*(r-t.y)/(t.next.y-t.y)+t.x&&(n=!n),t=t.next;while(t!==i);return n}function bm(i,e){let t=qh(i.i,i.x,i.y),n=qh(e.i,e.x,e.y),s=i.next,r=e.prev;return i.next=e,e.prev=i,t.next=s,s.prev=t,n.next=t,t.prev=n,r.next=n,n.prev=r,n}function vp(i,e,t,n){let s=qh(i,e,t);return n?(s.next=n.next,s.prev=n,n.next.prev=s,n.next=s):(s.prev=s,s.next=s),s}function Bo(i){i.next.prev=i.prev,i.prev.next=i.next,i.prevZ&&(i.prevZ.nextZ=i.nextZ),i.nextZ&&(i.nextZ.prevZ=i.prevZ)}function qh(i,e,t){return{i,x:e,y:t,prev:null,next:null,z:0,prevZ:null,nextZ:null,steiner:!1}}function ax(i,e,t,n){let s=0;for(let r=e,o=t-n;r<t;r+=n)s+=(i[o]-i[r])*(i[r+1]+i[o+1]),o=r;return s}var Yh=class{static triangulate(e,t,n=2){return $_(e,t,n)}},Ss=class i{static area(e){let t=e.length,n=0;for(let s=t-1,r=0;r<t;s=r++)n+=e[s].x*e[r].y-e[r].x*e[s].y;return n*.5}static isClockWise(e){return i.area(e)<0}static triangulateShape(e,t){let n=[],s=[],r=[];bp(e),Mp(n,e);let o=e.length;t.forEach(bp);for(let c=0;c<t.length;c++)s.push(o),o+=t[c].length,Mp(n,t[c]);let a=Yh.triangulate(n,s);for(let c=0;c<a.length;c+=3)r.push(a.slice(c,c+3));return r}};function bp(i){let e=i.length;e>2&&i[e-1].equals(i[0])&&i.pop()}function Mp(i,e){for(let t=0;t<e.length;t++)i.push(e[t].x),i.push(e[t].y)}var Ps=class i extends Pt{constructor(e=new Li([new xe(.5,.5),new xe(-.5,.5),new xe(-.5,-.5),new xe(.5,-.5)]),t={}){super(),this.type="ExtrudeGeometry",this.parameters={shapes:e,options:t},e=Array.isArray(e)?e:[e];let n=this,s=[],r=[];for(let a=0,c=e.length;a<c;a++){let l=e[a];o(l)}this.setAttribute("position",new Tt(s,3)),this.setAttribute("uv",new Tt(r,2)),this.computeVertexNormals();function o(a){let c=[],l=t.curveSegments!==void 0?t.curveSegments:12,h=t.steps!==void 0?t.steps:1,d=t.depth!==void 0?t.depth:1,u=t.bevelEnabled!==void 0?t.bevelEnabled:!0,f=t.bevelThickness!==void 0?t.bevelThickness:.2,p=t.bevelSize!==void 0?t.bevelSize:f-.1,_=t.bevelOffset!==void 0?t.bevelOffset:0,g=t.bevelSegments!==void 0?t.bevelSegments:3,m=t.extrudePath,v=t.UVGenerator!==void 0?t.UVGenerator:lx,M,b=!1,S,T,y,w;if(m){M=m.getSpacedPoints(h),b=!0,u=!1;let G=m.isCatmullRomCurve3?m.closed:!1;S=m.computeFrenetFrames(h,G),T=new L,y=new L,w=new L}u||(g=0,f=0,p=0,_=0);let F=a.extractPoints(l),I=F.shape,D=F.holes;if(!Ss.isClockWise(I)){I=I.reverse();for(let G=0,j=D.length;G<j;G++){let he=D[G];Ss.isClockWise(he)&&(D[G]=he.reverse())}}function J(G){let he=10000000000000001e-36,ve=G[0];for(let de=1;de<=G.length;de++){let Fe=de%G.length,Ce=G[Fe],Me=Ce.x-ve.x,qe=Ce.y-ve.y,at=Me*Me+qe*qe,U=Math.max(Math.abs(Ce.x),Math.abs(Ce.y),Math.abs(ve.x),Math.abs(ve.y)),_t=he*U*U;if(at<=_t){G.splice(Fe,1),de--;continue}ve=Ce}}J(I),D.forEach(J);let P=D.length,k=I;for(let G=0;G<P;G++){let j=D[G];I=I.concat(j)}function re(G,j,he){return j||Je("ExtrudeGeometry: vec does not exist"),G.clone().addScaledVector(j,he)}let Y=I.length;function me(G,j,he){let ve,de,Fe,Ce=G.x-j.x,Me=G.y-j.y,qe=he.x-G.x,at=he.y-G.y,U=Ce*Ce+Me*Me,_t=Ce*at-Me*qe;if(Math.abs(_t)>Number.EPSILON){let Qe=Math.sqrt(U),pt=Math.sqrt(qe*qe+at*at),Ee=j.x-Me/Qe,Et=j.y+Ce/Qe,Ye=he.x-at/pt,Ke=he.y+qe/pt,R=((Ye-Ee)*at-(Ke-Et)*qe)/(Ce*at-Me*qe);ve=Ee+Ce*R-G.x,de=Et+Me*R-G.y;let x=ve*ve+de*de;if(x<=2)return new xe(ve,de);Fe=Math.sqrt(x/2)}else{let Qe=!1;Ce>Number.EPSILON?qe>Number.EPSILON&&(Qe=!0):Ce<-Number.EPSILON?qe<-Number.EPSILON&&(Qe=!0):Math.sign(Me)===Math.sign(at)&&(Qe=!0),Qe?(ve=-Me,de=Ce,Fe=Math.sqrt(U)):(ve=Ce,de=Me,Fe=Math.sqrt(U/2))}return new xe(ve/Fe,de/Fe)}let se=[];for(let G=0,j=k.length,he=j-1,ve=G+1;G<j;G++,he++,ve++)he===j&&(he=0),ve===j&&(ve=0),se[G]=me(k[G],k[he],k[ve]);let ce=[],ue,Pe=se.concat();for(let G=0,j=P;G<j;G++){let he=D[G];ue=[];for(let ve=0,de=he.length,Fe=de-1,Ce=ve+1;ve<de;ve++,Fe++,Ce++)Fe===de&&(Fe=0),Ce===de&&(Ce=0),ue[ve]=me(he[ve],he[Fe],he[Ce]);ce.push(ue),Pe=Pe.concat(ue)}let ne;if(g===0)ne=Ss.triangulateShape(k,D);else{let G=[],j=[];for(let he=0;he<g;he++){let ve=he/g,de=f*Math.cos(ve*Math.PI/2),Fe=p*Math.sin(ve*Math.PI/2)+_;for(let Ce=0,Me=k.length;Ce<Me;Ce++){let qe=re(k[Ce],se[Ce],Fe);Oe(qe.x,qe.y,-de),ve===0&&G.push(qe)}for(let Ce=0,Me=P;Ce<Me;Ce++){let qe=D[Ce];ue=ce[Ce];let at=[];for(let U=0,_t=qe.length;U<_t;U++){let Qe=re(qe[U],ue[U],Fe);Oe(Qe.x,Qe.y,-de),ve===0&&at.push(Qe)}ve===0&&j.push(at)}}ne=Ss.triangulateShape(G,j)}let H=ne.length,le=p+_;for(let G=0;G<Y;G++){let j=u?re(I[G],Pe[G],le):I[G];b?(y.copy(S.normals[0]).multiplyScalar(j.x),T.copy(S.binormals[0]).multiplyScalar(j.y),w.copy(M[0]).add(y).add(T),Oe(w.x,w.y,w.z)):Oe(j.x,j.y,0)}for(let G=1;G<=h;G++)for(let j=0;j<Y;j++){let he=u?re(I[j],Pe[j],le):I[j];b?(y.copy(S.normals[G]).multiplyScalar(he.x),T.copy(S.binormals[G]).multiplyScalar(he.y),w.copy(M[G]).add(y).add(T),Oe(w.x,w.y,w.z)):Oe(he.x,he.y,d/h*G)}for(let G=g-1;G>=0;G--){let j=G/g,he=f*Math.cos(j*Math.PI/2),ve=p*Math.sin(j*Math.PI/2)+_;for(let de=0,Fe=k.length;de<Fe;de++){let Ce=re(k[de],se[de],ve);Oe(Ce.x,Ce.y,d+he)}for(let de=0,Fe=D.length;de<Fe;de++){let Ce=D[de];ue=ce[de];for(let Me=0,qe=Ce.length;Me<qe;Me++){let at=re(Ce[Me],ue[Me],ve);b?Oe(at.x,at.y+M[h-1].y,M[h-1].x+he):Oe(at.x,at.y,d+he)}}}we(),Ue();function we(){let G=s.length/3;if(u){let j=0,he=Y*j;for(let ve=0;ve<H;ve++){let de=ne[ve];ct(de[2]+he,de[1]+he,de[0]+he)}j=h+g*2,he=Y*j;for(let ve=0;ve<H;ve++){let de=ne[ve];ct(de[0]+he,de[1]+he,de[2]+he)}}else{for(let j=0;j<H;j++){let he=ne[j];ct(he[2],he[1],he[0])}for(let j=0;j<H;j++){let he=ne[j];ct(he[0]+Y*h,he[1]+Y*h,he[2]+Y*h)}}n.addGroup(G,s.length/3-G,0)}function Ue(){let G=s.length/3,j=0;Se(k,j),j+=k.length;for(let he=0,ve=D.length;he<ve;he++){let de=D[he];Se(de,j),j+=de.length}n.addGroup(G,s.length/3-G,1)}function Se(G,j){let he=G.length;for(;--he>=0;){let ve=he,de=he-1;de<0&&(de=G.length-1);for(let Fe=0,Ce=h+g*2;Fe<Ce;Fe++){let Me=Y*Fe,qe=Y*(Fe+1),at=j+ve+Me,U=j+de+Me,_t=j+de+qe,Qe=j+ve+qe;Xe(at,U,_t,Qe)}}}function Oe(G,j,he){c.push(G),c.push(j),c.push(he)}function ct(G,j,he){B(G),B(j),B(he);let ve=s.length/3,de=v.generateTopUV(n,s,ve-3,ve-2,ve-1);ae(de[0]),ae(de[1]),ae(de[2])}function Xe(G,j,he,ve){B(G),B(j),B(ve),B(j),B(he),B(ve);let de=s.length/3,Fe=v.generateSideWallUV(n,s,de-6,de-3,de-2,de-1);ae(Fe[0]),ae(Fe[1]),ae(Fe[3]),ae(Fe[1]),ae(Fe[2]),ae(Fe[3])}function B(G){s.push(c[G*3+0]),s.push(c[G*3+1]),s.push(c[G*3+2])}function ae(G){r.push(G.x),r.push(G.y)}}}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}toJSON(){let e=super.toJSON(),t=this.parameters.shapes,n=this.parameters.options;return cx(t,n,e)}static fromJSON(e,t){let n=[];for(let r=0,o=e.shapes.length;r<o;r++){let a=t[e.shapes[r]];n.push(a)}let s=e.options.extrudePath;return s!==void 0&&(e.options.extrudePath=new $h[s.type]().fromJSON(s)),new i(n,e.options)}},lx={generateTopUV:function(i,e,t,n,s){let r=e[t*3],o=e[t*3+1],a=e[n*3],c=e[n*3+1],l=e[s*3],h=e[s*3+1];return[new xe(r,o),new xe(a,c),new xe(l,h)]},generateSideWallUV:function(i,e,t,n,s,r){let o=e[t*3],a=e[t*3+1],c=e[t*3+2],l=e[n*3],h=e[n*3+1],d=e[n*3+2],u=e[s*3],f=e[s*3+1],p=e[s*3+2],_=e[r*3],g=e[r*3+1],m=e[r*3+2];return Math.abs(a-h)<Math.abs(o-l)?[new xe(o,1-c),new xe(l,1-d),new xe(u,1-p),new xe(_,1-m)]:[new xe(a,1-c),new xe(h,1-d),new xe(f,1-p),new xe(g,1-m)]}};function cx(i,e,t){if(t.shapes=[],Array.isArray(i))for(let n=0,s=i.length;n<s;n++){let r=i[n];t.shapes.push(r.uuid)}else t.shapes.push(i.uuid);return t.options=Object.assign({},e),e.extrudePath!==void 0&&(t.options.extrudePath=e.extrudePath.toJSON()),t}var ko=class i extends Pt{constructor(e=[new xe(0,-.5),new xe(.5,0),new xe(0,.5)],t=12,n=0,s=Math.PI*2){super(),this.type="LatheGeometry",this.parameters={points:e,segments:t,phiStart:n,phiLength:s},t=Math.floor(t),s=ot(s,0,Math.PI*2);let r=[],o=[],a=[],c=[],l=[],h=1/t,d=new L,u=new xe,f=new L,p=new L,_=new L,g=0,m=0;for(let v=0;v<=e.length-1;v++)switch(v){case 0:g=e[v+1].x-e[v].x,m=e[v+1].y-e[v].y,f.x=m*1,f.y=-g,f.z=m*0,_.copy(f),f.normalize(),c.push(f.x,f.y,f.z);break;case e.length-1:_.normalize(),c.push(_.x,_.y,_.z);break;default:g=e[v+1].x-e[v].x,m=e[v+1].y-e[v].y,f.x=m*1,f.y=-g,f.z=m*0,p.copy(f),f.x+=_.x,f.y+=_.y,f.z+=_.z,f.normalize(),c.push(f.x,f.y,f.z),_.copy(p)}for(let v=0;v<=t;v++){let M=n+v*h*s,b=Math.sin(M),S=Math.cos(M);for(let T=0;T<=e.length-1;T++){d.x=e[T].x*b,d.y=e[T].y,d.z=e[T].x*S,o.push(d.x,d.y,d.z),u.x=v/t,u.y=T/(e.length-1),a.push(u.x,u.y);let y=c[3*T+0]*b,w=c[3*T+1],F=c[3*T+0]*S;l.push(y,w,F)}}for(let v=0;v<t;v++)for(let M=0;M<e.length-1;M++){let b=M+v*e.length,S=b,T=b+e.length,y=b+e.length+1,w=b+1;r.push(S,T,w),r.push(y,w,T)}this.setIndex(r),this.setAttribute("position",new Tt(o,3)),this.setAttribute("uv",new Tt(a,2)),this.setAttribute("normal",new Tt(l,3))}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.points,e.segments,e.phiStart,e.phiLength)}};var zo=class i extends Pt{constructor(e=1,t=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:e,height:t,widthSegments:n,heightSegments:s};let r=e/2,o=t/2,a=Math.floor(n),c=Math.floor(s),l=a+1,h=c+1,d=e/a,u=t/c,f=[],p=[],_=[],g=[];for(let m=0;m<h;m++){let v=m*u-o;for(let M=0;M<l;M++){let b=M*d-r;p.push(b,-v,0),_.push(0,0,1),g.push(M/a),g.push(1-m/c)}}for(let m=0;m<c;m++)for(let v=0;v<a;v++){let M=v+l*m,b=v+l*(m+1),S=v+1+l*(m+1),T=v+1+l*m;f.push(M,b,T),f.push(b,S,T)}this.setIndex(f),this.setAttribute("position",new Tt(p,3)),this.setAttribute("normal",new Tt(_,3)),this.setAttribute("uv",new Tt(g,2))}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.width,e.height,e.widthSegments,e.heightSegments)}};function Hs(i){let e={};for(let t in i){e[t]={};for(let n in i[t]){let s=i[t][n];if(Sp(s))s.isRenderTargetTexture?(We("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),e[t][n]=null):e[t][n]=s.clone();else if(Array.isArray(s))if(Sp(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();e[t][n]=r}else e[t][n]=s.slice();else e[t][n]=s}}return e}function hn(i){let e={};for(let t=0;t<i.length;t++){let n=Hs(i[t]);for(let s in n)e[s]=n[s]}return e}function Sp(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function hx(i){let e=[];for(let t=0;t<i.length;t++)e.push(i[t].clone());return e}function Nu(i){let e=i.getRenderTarget();return e===null?i.outputColorSpace:e.isXRRenderTarget===!0?e.texture.colorSpace:ht.workingColorSpace}var Mm={clone:Hs,merge:hn},ux=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,dx=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,ui=class extends en{constructor(e){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=ux,this.fragmentShader=dx,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,e!==void 0&&this.setValues(e)}copy(e){return super.copy(e),this.fragmentShader=e.fragmentShader,this.vertexShader=e.vertexShader,this.uniforms=Hs(e.uniforms),this.uniformsGroups=hx(e.uniformsGroups),this.defines=Object.assign({},e.defines),this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.fog=e.fog,this.lights=e.lights,this.clipping=e.clipping,this.extensions=Object.assign({},e.extensions),this.glslVersion=e.glslVersion,this.defaultAttributeValues=Object.assign({},e.defaultAttributeValues),this.index0AttributeName=e.index0AttributeName,this.uniformsNeedUpdate=e.uniformsNeedUpdate,this}toJSON(e){let t=super.toJSON(e);t.glslVersion=this.glslVersion,t.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?t.uniforms[s]={type:"t",value:o.toJSON(e).uuid}:o&&o.isColor?t.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?t.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?t.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?t.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?t.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?t.uniforms[s]={type:"m4",value:o.toArray()}:t.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(t.defines=this.defines),t.vertexShader=this.vertexShader,t.fragmentShader=this.fragmentShader,t.lights=this.lights,t.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(t.extensions=n),t}fromJSON(e,t){if(super.fromJSON(e,t),e.uniforms!==void 0)for(let n in e.uniforms){let s=e.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=t[s.value]||null;break;case"c":this.uniforms[n].value=new Ge().setHex(s.value);break;case"v2":this.uniforms[n].value=new xe().fromArray(s.value);break;case"v3":this.uniforms[n].value=new L().fromArray(s.value);break;case"v4":this.uniforms[n].value=new bt().fromArray(s.value);break;case"m3":this.uniforms[n].value=new tt().fromArray(s.value);break;case"m4":this.uniforms[n].value=new je().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(e.defines!==void 0&&(this.defines=e.defines),e.vertexShader!==void 0&&(this.vertexShader=e.vertexShader),e.fragmentShader!==void 0&&(this.fragmentShader=e.fragmentShader),e.glslVersion!==void 0&&(this.glslVersion=e.glslVersion),e.extensions!==void 0)for(let n in e.extensions)this.extensions[n]=e.extensions[n];return e.lights!==void 0&&(this.lights=e.lights),e.clipping!==void 0&&(this.clipping=e.clipping),this}},El=class extends ui{constructor(e){super(e),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}},Ls=class extends en{constructor(e){super(),this.isMeshStandardMaterial=!0,this.type="MeshStandardMaterial",this.defines={STANDARD:""},this.color=new Ge(16777215),this.roughness=1,this.metalness=0,this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new Ge(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=zs,this.normalScale=new xe(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.roughnessMap=null,this.metalnessMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ni,this.envMapIntensity=1,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.defines={STANDARD:""},this.color.copy(e.color),this.roughness=e.roughness,this.metalness=e.metalness,this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.emissive.copy(e.emissive),this.emissiveMap=e.emissiveMap,this.emissiveIntensity=e.emissiveIntensity,this.bumpMap=e.bumpMap,this.bumpScale=e.bumpScale,this.normalMap=e.normalMap,this.normalMapType=e.normalMapType,this.normalScale.copy(e.normalScale),this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.roughnessMap=e.roughnessMap,this.metalnessMap=e.metalnessMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.envMapIntensity=e.envMapIntensity,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.flatShading=e.flatShading,this.fog=e.fog,this}},xn=class extends Ls{constructor(e){super(),this.isMeshPhysicalMaterial=!0,this.defines={STANDARD:"",PHYSICAL:""},this.type="MeshPhysicalMaterial",this.anisotropyRotation=0,this.anisotropyMap=null,this.clearcoatMap=null,this.clearcoatRoughness=0,this.clearcoatRoughnessMap=null,this.clearcoatNormalScale=new xe(1,1),this.clearcoatNormalMap=null,this.diffuseRoughnessMap=null,this.ior=1.5,Object.defineProperty(this,"reflectivity",{get:function(){return ot(2.5*(this.ior-1)/(this.ior+1),0,1)},set:function(t){this.ior=(1+.4*t)/(1-.4*t)}}),this.iridescenceMap=null,this.iridescenceIOR=1.3,this.iridescenceThicknessMinimum=100,this.iridescenceThicknessMaximum=400,this.iridescenceThicknessMap=null,this.sheenColor=new Ge(0),this.sheenColorMap=null,this.sheenRoughness=1,this.sheenRoughnessMap=null,this.transmissionMap=null,this.thickness=0,this.thicknessMap=null,this.attenuationDistance=1/0,this.attenuationColor=new Ge(1,1,1),this.specularIntensity=1,this.specularIntensityMap=null,this.specularColor=new Ge(1,1,1),this.specularColorMap=null,this._anisotropy=0,this._clearcoat=0,this._diffuseRoughness=0,this._dispersion=0,this._iridescence=0,this._retroreflectivity=0,this._sheen=0,this._transmission=0,this.setValues(e)}get anisotropy(){return this._anisotropy}set anisotropy(e){this._anisotropy>0!=e>0&&this.version++,this._anisotropy=e}get clearcoat(){return this._clearcoat}set clearcoat(e){this._clearcoat>0!=e>0&&this.version++,this._clearcoat=e}get diffuseRoughness(){return this._diffuseRoughness}set diffuseRoughness(e){this._diffuseRoughness>0!=e>0&&this.version++,this._diffuseRoughness=e}get iridescence(){return this._iridescence}set iridescence(e){this._iridescence>0!=e>0&&this.version++,this._iridescence=e}get dispersion(){return this._dispersion}set dispersion(e){this._dispersion>0!=e>0&&this.version++,this._dispersion=e}get retroreflectivity(){return this._retroreflectivity}set retroreflectivity(e){this._retroreflectivity>0!=e>0&&this.version++,this._retroreflectivity=e}get sheen(){return this._sheen}set sheen(e){this._sheen>0!=e>0&&this.version++,this._sheen=e}get transmission(){return this._transmission}set transmission(e){this._transmission>0!=e>0&&this.version++,this._transmission=e}get iridescenceThicknessRange(){return ws('MeshPhysicalMaterial: The "iridescenceThicknessRange" property has been replaced by "iridescenceThicknessMinimum" and "iridescenceThicknessMaximum".'),[this.iridescenceThicknessMinimum,this.iridescenceThicknessMaximum]}set iridescenceThicknessRange(e){ws('MeshPhysicalMaterial: The "iridescenceThicknessRange" property has been replaced by "iridescenceThicknessMinimum" and "iridescenceThicknessMaximum".'),this.iridescenceThicknessMinimum=e[0],this.iridescenceThicknessMaximum=e[1]}copy(e){return super.copy(e),this.defines={STANDARD:"",PHYSICAL:""},this.anisotropy=e.anisotropy,this.anisotropyRotation=e.anisotropyRotation,this.anisotropyMap=e.anisotropyMap,this.clearcoat=e.clearcoat,this.clearcoatMap=e.clearcoatMap,this.clearcoatRoughness=e.clearcoatRoughness,this.clearcoatRoughnessMap=e.clearcoatRoughnessMap,this.clearcoatNormalMap=e.clearcoatNormalMap,this.clearcoatNormalScale.copy(e.clearcoatNormalScale),this.diffuseRoughness=e.diffuseRoughness,this.diffuseRoughnessMap=e.diffuseRoughnessMap,this.dispersion=e.dispersion,this.ior=e.ior,this.iridescence=e.iridescence,this.iridescenceMap=e.iridescenceMap,this.iridescenceIOR=e.iridescenceIOR,this.iridescenceThicknessMinimum=e.iridescenceThicknessMinimum,this.iridescenceThicknessMaximum=e.iridescenceThicknessMaximum,this.iridescenceThicknessMap=e.iridescenceThicknessMap,this.retroreflectivity=e.retroreflectivity,this.sheen=e.sheen,this.sheenColor.copy(e.sheenColor),this.sheenColorMap=e.sheenColorMap,this.sheenRoughness=e.sheenRoughness,this.sheenRoughnessMap=e.sheenRoughnessMap,this.transmission=e.transmission,this.transmissionMap=e.transmissionMap,this.thickness=e.thickness,this.thicknessMap=e.thicknessMap,this.attenuationDistance=e.attenuationDistance,this.attenuationColor.copy(e.attenuationColor),this.specularIntensity=e.specularIntensity,this.specularIntensityMap=e.specularIntensityMap,this.specularColor.copy(e.specularColor),this.specularColorMap=e.specularColorMap,this}},Ho=class extends en{constructor(e){super(),this.isMeshPhongMaterial=!0,this.type="MeshPhongMaterial",this.color=new Ge(16777215),this.specular=new Ge(1118481),this.shininess=30,this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new Ge(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=zs,this.normalScale=new xe(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ni,this.combine=Qo,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.specular.copy(e.specular),this.shininess=e.shininess,this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.emissive.copy(e.emissive),this.emissiveMap=e.emissiveMap,this.emissiveIntensity=e.emissiveIntensity,this.bumpMap=e.bumpMap,this.bumpScale=e.bumpScale,this.normalMap=e.normalMap,this.normalMapType=e.normalMapType,this.normalScale.copy(e.normalScale),this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.specularMap=e.specularMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.combine=e.combine,this.reflectivity=e.reflectivity,this.envMapIntensity=e.envMapIntensity,this.refractionRatio=e.refractionRatio,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.flatShading=e.flatShading,this.fog=e.fog,this}};var Rr=class extends en{constructor(e){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new Ge(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new Ge(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=zs,this.normalScale=new xe(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ni,this.combine=Qo,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.emissive.copy(e.emissive),this.emissiveMap=e.emissiveMap,this.emissiveIntensity=e.emissiveIntensity,this.bumpMap=e.bumpMap,this.bumpScale=e.bumpScale,this.normalMap=e.normalMap,this.normalMapType=e.normalMapType,this.normalScale.copy(e.normalScale),this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.specularMap=e.specularMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.combine=e.combine,this.reflectivity=e.reflectivity,this.envMapIntensity=e.envMapIntensity,this.refractionRatio=e.refractionRatio,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.flatShading=e.flatShading,this.fog=e.fog,this}},Al=class extends en{constructor(e){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=rm,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(e)}copy(e){return super.copy(e),this.depthPacking=e.depthPacking,this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this}},Rl=class extends en{constructor(e){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(e)}copy(e){return super.copy(e),this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this}},Go=class extends en{constructor(e){super(),this.isMeshMatcapMaterial=!0,this.defines={MATCAP:""},this.type="MeshMatcapMaterial",this.color=new Ge(16777215),this.matcap=null,this.map=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=zs,this.normalScale=new xe(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.alphaMap=null,this.wireframe=!1,this.wireframeLinewidth=1,this.flatShading=!1,this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.defines={MATCAP:""},this.color.copy(e.color),this.matcap=e.matcap,this.map=e.map,this.bumpMap=e.bumpMap,this.bumpScale=e.bumpScale,this.normalMap=e.normalMap,this.normalMapType=e.normalMapType,this.normalScale.copy(e.normalScale),this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.alphaMap=e.alphaMap,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.flatShading=e.flatShading,this.fog=e.fog,this}};function Zi(i,e){return!i||i.constructor===e?i:typeof e.BYTES_PER_ELEMENT=="number"?new e(i):Array.prototype.slice.call(i)}function fo(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}function fx(i){function e(s,r){return i[s]-i[r]}let t=i.length,n=new Array(t);for(let s=0;s!==t;++s)n[s]=s;return n.sort(e),n}function wp(i,e,t){let n=i.length,s=new i.constructor(n);for(let r=0,o=0;o!==n;++r){let a=t[r]*e;for(let c=0;c!==e;++c)s[o++]=i[a+c]}return s}function px(i,e,t,n){let s=1,r=i[0];for(;r!==void 0&&r[n]===void 0;)r=i[s++];if(r===void 0)return;let o=r[n];if(o!==void 0)if(Array.isArray(o))do o=r[n],o!==void 0&&(e.push(r.time),t.push(...o)),r=i[s++];while(r!==void 0);else if(o.toArray!==void 0)do o=r[n],o!==void 0&&(e.push(r.time),o.toArray(t,t.length)),r=i[s++];while(r!==void 0);else do o=r[n],o!==void 0&&(e.push(r.time),t.push(o)),r=i[s++];while(r!==void 0)}var di=class{constructor(e,t,n,s){this.parameterPositions=e,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new t.constructor(n),this.sampleValues=t,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(e){let t=this.parameterPositions,n=this._cachedIndex,s=t[n],r=t[n-1];n:{e:{let o;t:{i:if(!(e<s)){for(let a=n+2;;){if(s===void 0){if(e<r)break i;return n=t.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=t[++n],e<s)break e}o=t.length;break t}if(!(e>=r)){let a=t[1];e<a&&(n=2,r=a);for(let c=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===c)break;if(s=r,r=t[--n-1],e>=r)break e}o=n,n=0;break t}break n}for(;n<o;){let a=n+o>>>1;e<t[a]?o=a:n=a+1}if(s=t[n],r=t[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=t.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,e,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(e){let t=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=e*s;for(let o=0;o!==s;++o)t[o]=n[r+o];return t}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Cl=class extends di{constructor(e,t,n,s){super(e,t,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:Hh,endingEnd:Hh}}intervalChanged_(e,t,n){let s=this.parameterPositions,r=e-2,o=e+1,a=s[r],c=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case Gh:r=e,a=2*t-n;break;case Vh:r=s.length-2,a=t+s[r]-s[r+1];break;default:r=e,a=n}if(c===void 0)switch(this.getSettings_().endingEnd){case Gh:o=e,c=2*n-t;break;case Vh:o=1,c=n+s[1]-s[0];break;default:o=e-1,c=t}let l=(n-t)*.5,h=this.valueSize;this._weightPrev=l/(t-a),this._weightNext=l/(c-n),this._offsetPrev=r*h,this._offsetNext=o*h}interpolate_(e,t,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=e*a,l=c-a,h=this._offsetPrev,d=this._offsetNext,u=this._weightPrev,f=this._weightNext,p=(n-t)/(s-t),_=p*p,g=_*p,m=-u*g+2*u*_-u*p,v=(1+u)*g+(-1.5-2*u)*_+(-.5+u)*p+1,M=(-1-f)*g+(1.5+f)*_+.5*p,b=f*g-f*_;for(let S=0;S!==a;++S)r[S]=m*o[h+S]+v*o[l+S]+M*o[c+S]+b*o[d+S];return r}},Il=class extends di{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e,t,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=e*a,l=c-a,h=(n-t)/(s-t),d=1-h;for(let u=0;u!==a;++u)r[u]=o[l+u]*d+o[c+u]*h;return r}},Pl=class extends di{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e){return this.copySampleValue_(e-1)}},Ll=class extends di{interpolate_(e,t,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=e*a,l=c-a,h=this.inTangents,d=this.outTangents;if(!h||!d){let p=(n-t)/(s-t),_=1-p;for(let g=0;g!==a;++g)r[g]=o[l+g]*_+o[c+g]*p;return r}let u=a*2,f=e-1;for(let p=0;p!==a;++p){let _=o[l+p],g=o[c+p],m=f*u+p*2,v=d[m],M=d[m+1],b=e*u+p*2,S=h[b],T=h[b+1],y=gx(n,t,v,S,s);r[p]=Sm(y,_,M,T,g)}return r}};function Sm(i,e,t,n,s){let r=1-i;return r*r*r*e+3*r*r*i*t+3*r*i*i*n+i*i*i*s}function mx(i,e,t,n,s){let r=1-i;return 3*r*r*(t-e)+6*r*i*(n-t)+3*i*i*(s-n)}function gx(i,e,t,n,s){let r=(i-e)/(s-e);for(let o=0;o<8;o++){let a=Sm(r,e,t,n,s)-i;if(Math.abs(a)<1e-10)break;let c=mx(r,e,t,n,s);if(Math.abs(c)<1e-10)break;r=Math.max(0,Math.min(1,r-a/c))}return r}var En=class{constructor(e,t,n,s){if(e===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(t===void 0||t.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+e);this.name=e,this.times=Zi(t,this.TimeBufferType),this.values=Zi(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(e){let t=e.constructor,n;if(t.toJSON!==this.toJSON)n=t.toJSON(e);else{n={name:e.name,times:Zi(e.times,Array),values:Zi(e.values,Array)};let s=e.getInterpolation();s!==e.DefaultInterpolation&&(n.interpolation=s),fo(e.settings)&&(n.settings={inTangents:Zi(e.settings.inTangents,Array),outTangents:Zi(e.settings.outTangents,Array)})}return n.type=e.ValueTypeName,n}InterpolantFactoryMethodDiscrete(e){return new Pl(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodLinear(e){return new Il(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodSmooth(e){return new Cl(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodBezier(e){let t=new Ll(this.times,this.values,this.getValueSize(),e);return this.settings&&(t.inTangents=this.settings.inTangents,t.outTangents=this.settings.outTangents),t}setInterpolation(e){let t;switch(e){case Ts:t=this.InterpolantFactoryMethodDiscrete;break;case Es:t=this.InterpolantFactoryMethodLinear;break;case rl:t=this.InterpolantFactoryMethodSmooth;break;case zh:t=this.InterpolantFactoryMethodBezier;break}if(t===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(e!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return We("KeyframeTrack:",n),this}return this.createInterpolant=t,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return Ts;case this.InterpolantFactoryMethodLinear:return Es;case this.InterpolantFactoryMethodSmooth:return rl;case this.InterpolantFactoryMethodBezier:return zh}}getValueSize(){return this.values.length/this.times.length}shift(e){if(e!==0){let t=this.times;for(let n=0,s=t.length;n!==s;++n)t[n]+=e;fo(this.settings)&&(Tp(this.settings.inTangents,e),Tp(this.settings.outTangents,e))}return this}scale(e){if(e!==1){let t=this.times;for(let n=0,s=t.length;n!==s;++n)t[n]*=e;fo(this.settings)&&(Ep(this.settings.inTangents,e),Ep(this.settings.outTangents,e))}return this}trim(e,t){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<e;)++r;for(;o!==-1&&n[o]>t;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let e=!0,t=this.getValueSize();t-Math.floor(t)!==0&&(Je("KeyframeTrack: Invalid value size in track.",this),e=!1);let n=this.times,s=this.values,r=n.length;r===0&&(Je("KeyframeTrack: Track is empty.",this),e=!1);let o=null;for(let a=0;a!==r;a++){let c=n[a];if(typeof c=="number"&&isNaN(c)){Je("KeyframeTrack: Time is not a valid number.",this,a,c),e=!1;break}if(o!==null&&o>c){Je("KeyframeTrack: Out of order keys.",this,a,c,o),e=!1;break}o=c}if(s!==void 0&&t_(s))for(let a=0,c=s.length;a!==c;++a){let l=s[a];if(isNaN(l)){Je("KeyframeTrack: Value is not a valid number.",this,a,l),e=!1;break}}return e}optimize(){let e=this.times.slice(),t=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===rl,r=e.length-1,o=1;for(let a=1;a<r;++a){let c=!1,l=e[a],h=e[a+1];if(l!==h&&(a!==1||l!==e[0]))if(s)c=!0;else{let d=a*n,u=d-n,f=d+n;for(let p=0;p!==n;++p){let _=t[d+p];if(_!==t[u+p]||_!==t[f+p]){c=!0;break}}}if(c){if(a!==o){e[o]=e[a];let d=a*n,u=o*n;for(let f=0;f!==n;++f)t[u+f]=t[d+f]}++o}}if(r>0){e[o]=e[r];for(let a=r*n,c=o*n,l=0;l!==n;++l)t[c+l]=t[a+l];++o}return o!==e.length?(this.times=e.slice(0,o),this.values=t.slice(0,o*n)):(this.times=e,this.values=t),this}clone(){let e=this.times.slice(),t=this.values.slice(),n=this.constructor,s=new n(this.name,e,t);return s.createInterpolant=this.createInterpolant,fo(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function Tp(i,e){for(let t=0,n=i.length;t!==n;t+=2)i[t]+=e}function Ep(i,e){for(let t=0,n=i.length;t!==n;t+=2)i[t]*=e}En.prototype.ValueTypeName="";En.prototype.TimeBufferType=Float32Array;En.prototype.ValueBufferType=Float32Array;En.prototype.DefaultInterpolation=Es;var Ni=class extends En{constructor(e,t,n){super(e,t,n)}};Ni.prototype.ValueTypeName="bool";Ni.prototype.ValueBufferType=Array;Ni.prototype.DefaultInterpolation=Ts;Ni.prototype.InterpolantFactoryMethodLinear=void 0;Ni.prototype.InterpolantFactoryMethodSmooth=void 0;var Vo=class extends En{constructor(e,t,n,s){super(e,t,n,s)}};Vo.prototype.ValueTypeName="color";var Di=class extends En{constructor(e,t,n,s){super(e,t,n,s)}};Di.prototype.ValueTypeName="number";var Nl=class extends di{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e,t,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=(n-t)/(s-t),l=e*a;for(let h=l+a;l!==h;l+=4)cn.slerpFlat(r,0,o,l-a,o,l,c);return r}},Ui=class extends En{constructor(e,t,n,s){super(e,t,n,s)}InterpolantFactoryMethodLinear(e){return new Nl(this.times,this.values,this.getValueSize(),e)}};Ui.prototype.ValueTypeName="quaternion";Ui.prototype.InterpolantFactoryMethodSmooth=void 0;var Oi=class extends En{constructor(e,t,n){super(e,t,n)}};Oi.prototype.ValueTypeName="string";Oi.prototype.ValueBufferType=Array;Oi.prototype.DefaultInterpolation=Ts;Oi.prototype.InterpolantFactoryMethodLinear=void 0;Oi.prototype.InterpolantFactoryMethodSmooth=void 0;var ts=class extends En{constructor(e,t,n,s){super(e,t,n,s)}};ts.prototype.ValueTypeName="vector";var Wo=class{constructor(e="",t=-1,n=[],s=sm){this.name=e,this.tracks=n,this.duration=t,this.blendMode=s,this.uuid=ri(),this.userData={},this.duration<0&&this.resetDuration()}static parse(e){let t=[],n=e.tracks,s=1/(e.fps||1);for(let o=0,a=n.length;o!==a;++o)t.push(xx(n[o]).scale(s));let r=new this(e.name,e.duration,t,e.blendMode);return r.uuid=e.uuid,r.userData=JSON.parse(e.userData||"{}"),r}static toJSON(e){let t=[],n=e.tracks,s={name:e.name,duration:e.duration,tracks:t,uuid:e.uuid,blendMode:e.blendMode,userData:JSON.stringify(e.userData)};for(let r=0,o=n.length;r!==o;++r)t.push(En.toJSON(n[r]));return s}static CreateFromMorphTargetSequence(e,t,n,s){let r=t.length,o=[];for(let a=0;a<r;a++){let c=[],l=[];c.push((a+r-1)%r,a,(a+1)%r),l.push(0,1,0);let h=fx(c);c=wp(c,1,h),l=wp(l,1,h),!s&&c[0]===0&&(c.push(r),l.push(l[0])),o.push(new Di(".morphTargetInfluences["+t[a].name+"]",c,l).scale(1/n))}return new this(e,-1,o)}static findByName(e,t){let n=e;if(!Array.isArray(e)){let s=e;n=s.geometry&&s.geometry.animations||s.animations}for(let s=0;s<n.length;s++)if(n[s].name===t)return n[s];return null}static CreateClipsFromMorphTargetSequences(e,t,n){let s={},r=/^([\w-]*?)([\d]+)$/;for(let a=0,c=e.length;a<c;a++){let l=e[a],h=l.name.match(r);if(h&&h.length>1){let d=h[1],u=s[d];u||(s[d]=u=[]),u.push(l)}}let o=[];for(let a in s)o.push(this.CreateFromMorphTargetSequence(a,s[a],t,n));return o}resetDuration(){let e=this.tracks,t=0;for(let n=0,s=e.length;n!==s;++n){let r=this.tracks[n];t=Math.max(t,r.times[r.times.length-1])}return this.duration=t,this}trim(){for(let e=0;e<this.tracks.length;e++)this.tracks[e].trim(0,this.duration);return this}validate(){let e=!0;for(let t=0;t<this.tracks.length;t++)e=e&&this.tracks[t].validate();return e}optimize(){for(let e=0;e<this.tracks.length;e++)this.tracks[e].optimize();return this}clone(){let e=[];for(let n=0;n<this.tracks.length;n++)e.push(this.tracks[n].clone());let t=new this.constructor(this.name,this.duration,e,this.blendMode);return t.userData=JSON.parse(JSON.stringify(this.userData)),t}toJSON(){return this.constructor.toJSON(this)}};function _x(i){switch(i.toLowerCase()){case"scalar":case"double":case"float":case"number":case"integer":return Di;case"vector":case"vector2":case"vector3":case"vector4":return ts;case"color":return Vo;case"quaternion":return Ui;case"bool":case"boolean":return Ni;case"string":return Oi}throw new Error("THREE.KeyframeTrack: Unsupported typeName: "+i)}function xx(i){if(i.type===void 0)throw new Error("THREE.KeyframeTrack: track type undefined, can not parse");let e=_x(i.type);if(i.times===void 0){let n=[],s=[];px(i.keys,n,s,"value"),i.times=n,i.values=s}let t;return e.parse!==void 0?t=e.parse(i):t=new e(i.name,i.times,i.values,i.interpolation),fo(i.settings)&&(t.settings={inTangents:Zi(i.settings.inTangents,Float32Array),outTangents:Zi(i.settings.outTangents,Float32Array)}),t}var ci={enabled:!1,files:{},add:function(i,e){this.enabled!==!1&&(Ap(i)||(this.files[i]=e))},get:function(i){if(this.enabled!==!1&&!Ap(i))return this.files[i]},remove:function(i){delete this.files[i]},clear:function(){this.files={}}};function Ap(i){try{let e=i.slice(i.indexOf(":")+1);return new URL(e).protocol==="blob:"}catch{return!1}}var Dl=class{constructor(e,t,n){let s=this,r=!1,o=0,a=0,c,l=[];this.onStart=void 0,this.onLoad=e,this.onProgress=t,this.onError=n,this._abortController=null,this.itemStart=function(h){a++,r===!1&&s.onStart!==void 0&&s.onStart(h,o,a),r=!0},this.itemEnd=function(h){o++,s.onProgress!==void 0&&s.onProgress(h,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),c?c(h):h},this.setURLModifier=function(h){return c=h,this},this.addHandler=function(h,d){return l.push(h,d),this},this.removeHandler=function(h){let d=l.indexOf(h);return d!==-1&&l.splice(d,2),this},this.getHandler=function(h){for(let d=0,u=l.length;d<u;d+=2){let f=l[d],p=l[d+1];if(f.global&&(f.lastIndex=0),f.test(h))return p}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},wm=new Dl,fi=class{constructor(e){this.manager=e!==void 0?e:wm,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(e,t){let n=this;return new Promise(function(s,r){n.load(e,s,t,r)})}parse(){}setCrossOrigin(e){return this.crossOrigin=e,this}setWithCredentials(e){return this.withCredentials=e,this}setPath(e){return this.path=e,this}setResourcePath(e){return this.resourcePath=e,this}setRequestHeader(e){return this.requestHeader=e,this}setPriority(e){return this.priority=e,this}setCache(e){return this.cache=e,this}abort(){return this}};fi.DEFAULT_MATERIAL_NAME="__DEFAULT";var Ti={},jh=class extends Error{constructor(e,t){super(e),this.response=t}},Cr=class extends fi{constructor(e){super(e),this.mimeType="",this.responseType="",this._abortController=new AbortController}load(e,t,n,s){e===void 0&&(e=""),this.path!==void 0&&(e=this.path+e),e=this.manager.resolveURL(e);let r=ci.get(`file:${e}`);if(r!==void 0){this.manager.itemStart(e),setTimeout(()=>{t&&t(r),this.manager.itemEnd(e)},0);return}if(Ti[e]!==void 0){Ti[e].push({onLoad:t,onProgress:n,onError:s});return}Ti[e]=[],Ti[e].push({onLoad:t,onProgress:n,onError:s});let o=new Request(e,{headers:new Headers(this.requestHeader),credentials:this.withCredentials?"include":"same-origin",priority:this.priority,cache:this.cache,signal:typeof AbortSignal.any=="function"?AbortSignal.any([this._abortController.signal,this.manager.abortController.signal]):this._abortController.signal}),a=this.mimeType,c=this.responseType;fetch(o).then(l=>{if(l.status===200||l.status===0){if(l.status===0&&We("FileLoader: HTTP Status 0 received."),typeof ReadableStream>"u"||l.body===void 0||l.body.getReader===void 0)return l;let h=Ti[e],d=l.body.getReader(),u=l.headers.get("X-File-Size")||l.headers.get("Content-Length"),f=u?parseInt(u):0,p=f!==0,_=0,g=new ReadableStream({start(m){v();function v(){d.read().then(({done:M,value:b})=>{if(M)m.close();else{_+=b.byteLength;let S=new ProgressEvent("progress",{lengthComputable:p,loaded:_,total:f});for(let T=0,y=h.length;T<y;T++){let w=h[T];w.onProgress&&w.onProgress(S)}m.enqueue(b),v()}},M=>{m.error(M)})}}});return new Response(g)}else throw new jh(`fetch for "${l.url}" responded with ${l.status}: ${l.statusText}`,l)}).then(l=>{switch(c){case"arraybuffer":return l.arrayBuffer();case"blob":return l.blob();case"document":return l.text().then(h=>new DOMParser().parseFromString(h,a));case"json":return l.json();default:if(a==="")return l.text();{let d=/charset="?([^;"\s]*)"?/i.exec(a),u=d&&d[1]?d[1].toLowerCase():void 0,f=new TextDecoder(u);return l.arrayBuffer().then(p=>f.decode(p))}}}).then(l=>{ci.add(`file:${e}`,l);let h=Ti[e];delete Ti[e];for(let d=0,u=h.length;d<u;d++){let f=h[d];f.onLoad&&f.onLoad(l)}}).catch(l=>{let h=Ti[e];if(h===void 0)throw this.manager.itemError(e),l;delete Ti[e];for(let d=0,u=h.length;d<u;d++){let f=h[d];f.onError&&f.onError(l)}this.manager.itemError(e)}).finally(()=>{this.manager.itemEnd(e)}),this.manager.itemStart(e)}setResponseType(e){return this.responseType=e,this}setMimeType(e){return this.mimeType=e,this}abort(){return this._abortController.abort(),this._abortController=new AbortController,this}};var lr=new WeakMap,Ul=class extends fi{constructor(e){super(e)}load(e,t,n,s){this.path!==void 0&&(e=this.path+e),e=this.manager.resolveURL(e);let r=this,o=ci.get(`image:${e}`);if(o!==void 0){if(o.complete===!0)r.manager.itemStart(e),setTimeout(function(){t&&t(o),r.manager.itemEnd(e)},0);else{let d=lr.get(o);d===void 0&&(d=[],lr.set(o,d)),d.push({onLoad:t,onError:s})}return o}let a=gr("img");function c(){h(),t&&t(this);let d=lr.get(this)||[];for(let u=0;u<d.length;u++){let f=d[u];f.onLoad&&f.onLoad(this)}lr.delete(this),r.manager.itemEnd(e)}function l(d){h(),s&&s(d),ci.remove(`image:${e}`);let u=lr.get(this)||[];for(let f=0;f<u.length;f++){let p=u[f];p.onError&&p.onError(d)}lr.delete(this),r.manager.itemError(e),r.manager.itemEnd(e)}function h(){a.removeEventListener("load",c,!1),a.removeEventListener("error",l,!1)}return a.addEventListener("load",c,!1),a.addEventListener("error",l,!1),e.slice(0,5)!=="data:"&&this.crossOrigin!==void 0&&(a.crossOrigin=this.crossOrigin),ci.add(`image:${e}`,a),r.manager.itemStart(e),a.fetchPriority=this.priority,a.src=e,a}};var $o=class extends fi{constructor(e){super(e)}load(e,t,n,s){let r=new Wt,o=new Ul(this.manager);return o.setPriority(this.priority),o.setCache(this.cache),o.setCrossOrigin(this.crossOrigin),o.setPath(this.path),o.load(e,function(a){r.image=a,r.needsUpdate=!0,t!==void 0&&t(r)},n,s),r}},ns=class extends At{static registerNode(e){this.prototype._lightNode=e}constructor(e,t=1){super(),this.isLight=!0,this.type="Light",this.color=new Ge(e),this.intensity=t}copy(e,t){return super.copy(e,t),this.color.copy(e.color),this.intensity=e.intensity,this}toJSON(e){let t=super.toJSON(e);return t.object.color=this.color.getHex(),t.object.intensity=this.intensity,t}},Xo=class extends ns{constructor(e,t,n){super(e,n),this.isHemisphereLight=!0,this.type="HemisphereLight",this.position.copy(At.DEFAULT_UP),this.updateMatrix(),this.groundColor=new Ge(t)}copy(e,t){return super.copy(e,t),this.groundColor.copy(e.groundColor),this}toJSON(e){let t=super.toJSON(e);return t.object.groundColor=this.groundColor.getHex(),t}},Fh=new je,Rp=new L,Cp=new L,Ir=class{constructor(e){this.camera=e,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new xe(512,512),this.mapType=Rn,this.map=null,this.mapPass=null,this.matrix=new je,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Qi,this._frameExtents=new xe(1,1),this._viewportCount=1,this._viewports=[new bt(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(e){let t=this.camera;Rp.setFromMatrixPosition(e.matrixWorld),t.position.copy(Rp),Cp.setFromMatrixPosition(e.target.matrixWorld),t.lookAt(Cp),t.updateMatrixWorld(),this._updateMatrix(t,this.matrix,this._frustum)}_updateMatrix(e,t,n,s){Fh.multiplyMatrices(e.projectionMatrix,e.matrixWorldInverse),n.setFromProjectionMatrix(Fh,e.coordinateSystem,e.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,c=s?s.x/r.x:0,l=s?s.y/r.y:0;e.coordinateSystem===mr||e.reversedDepth?t.set(.5*o,0,0,.5*o+c,0,.5*a,0,.5*a+l,0,0,1,0,0,0,0,1):t.set(.5*o,0,0,.5*o+c,0,.5*a,0,.5*a+l,0,0,.5,.5,0,0,0,1),t.multiply(Fh)}getViewport(e){return this._viewports[e]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(e){return this.camera=e.camera.clone(),this.intensity=e.intensity,this.bias=e.bias,this.radius=e.radius,this.autoUpdate=e.autoUpdate,this.needsUpdate=e.needsUpdate,this.normalBias=e.normalBias,this.blurSamples=e.blurSamples,this.mapSize.copy(e.mapSize),this.mapType=e.mapType,this.biasNode=e.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let e={};return e.intensity=this.intensity,e.bias=this.bias,e.normalBias=this.normalBias,e.radius=this.radius,e.blurSamples=this.blurSamples,e.mapSize=this.mapSize.toArray(),e.mapType=this.mapType,e.camera=this.camera.toJSON(!1).object,delete e.camera.matrix,e}},il=new L,sl=new cn,li=new L,qo=class extends At{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new je,this.projectionMatrix=new je,this.projectionMatrixInverse=new je,this.coordinateSystem=Gn,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(e,t){return super.copy(e,t),this.matrixWorldInverse.copy(e.matrixWorldInverse),this.projectionMatrix.copy(e.projectionMatrix),this.projectionMatrixInverse.copy(e.projectionMatrixInverse),this.coordinateSystem=e.coordinateSystem,this}getWorldDirection(e){return super.getWorldDirection(e).negate()}updateMatrixWorld(e){super.updateMatrixWorld(e),this.matrixWorld.decompose(il,sl,li),li.x===1&&li.y===1&&li.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(il,sl,li.set(1,1,1)).invert()}updateWorldMatrix(e,t,n=!1){super.updateWorldMatrix(e,t,n),this.matrixWorld.decompose(il,sl,li),li.x===1&&li.y===1&&li.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(il,sl,li.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Ki=new L,Ip=new xe,Pp=new xe,Gt=class extends qo{constructor(e=50,t=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=e,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=t,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.fov=e.fov,this.zoom=e.zoom,this.near=e.near,this.far=e.far,this.focus=e.focus,this.aspect=e.aspect,this.view=e.view===null?null:Object.assign({},e.view),this.filmGauge=e.filmGauge,this.filmOffset=e.filmOffset,this}setFocalLength(e){let t=.5*this.getFilmHeight()/e;this.fov=As*2*Math.atan(t),this.updateProjectionMatrix()}getFocalLength(){let e=Math.tan(ur*.5*this.fov);return .5*this.getFilmHeight()/e}getEffectiveFOV(){return As*2*Math.atan(Math.tan(ur*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(e,t,n){Ki.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),t.set(Ki.x,Ki.y).multiplyScalar(-e/Ki.z),Ki.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Ki.x,Ki.y).multiplyScalar(-e/Ki.z)}getViewSize(e,t){return this.getViewBounds(e,Ip,Pp),t.subVectors(Pp,Ip)}setViewOffset(e,t,n,s,r,o){this.aspect=e/t,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=this.near,t=e*Math.tan(ur*.5*this.fov)/this.zoom,n=2*t,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let c=o.fullWidth,l=o.fullHeight;r+=o.offsetX*s/c,t-=o.offsetY*n/l,s*=o.width/c,n*=o.height/l}let a=this.filmOffset;a!==0&&(r+=e*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,t,t-n,e,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.fov=this.fov,t.object.zoom=this.zoom,t.object.near=this.near,t.object.far=this.far,t.object.focus=this.focus,t.object.aspect=this.aspect,this.view!==null&&(t.object.view=Object.assign({},this.view)),t.object.filmGauge=this.filmGauge,t.object.filmOffset=this.filmOffset,t}},Kh=class extends Ir{constructor(){super(new Gt(50,1,.5,500)),this.isSpotLightShadow=!0,this.focus=1,this.aspect=1}updateMatrices(e){let t=this.camera,n=As*2*e.angle*this.focus,s=this.mapSize.width/this.mapSize.height*this.aspect,r=e.distance||t.far;(n!==t.fov||s!==t.aspect||r!==t.far)&&(t.fov=n,t.aspect=s,t.far=r,t.updateProjectionMatrix()),super.updateMatrices(e)}copy(e){return super.copy(e),this.focus=e.focus,this.aspect=e.aspect,this}toJSON(){let e=super.toJSON();return e.focus=this.focus,e.aspect=this.aspect,e}},Yo=class extends ns{constructor(e,t,n=0,s=Math.PI/3,r=0,o=2){super(e,t),this.isSpotLight=!0,this.type="SpotLight",this.position.copy(At.DEFAULT_UP),this.updateMatrix(),this.target=new At,this.distance=n,this.angle=s,this.penumbra=r,this.decay=o,this.map=null,this.shadow=new Kh}get power(){return this.intensity*Math.PI}set power(e){this.intensity=e/Math.PI}dispose(){super.dispose(),this.shadow.dispose()}copy(e,t){return super.copy(e,t),this.distance=e.distance,this.angle=e.angle,this.penumbra=e.penumbra,this.decay=e.decay,this.target=e.target.clone(),this.map=e.map,this.shadow=e.shadow.clone(),this}toJSON(e){let t=super.toJSON(e);return t.object.distance=this.distance,t.object.angle=this.angle,t.object.decay=this.decay,t.object.penumbra=this.penumbra,t.object.target=this.target.uuid,this.map&&this.map.isTexture&&(t.object.map=this.map.toJSON(e).uuid),t.object.shadow=this.shadow.toJSON(),t}},Zh=class extends Ir{constructor(){super(new Gt(90,1,.5,500)),this.isPointLightShadow=!0}},jo=class extends ns{constructor(e,t,n=0,s=2){super(e,t),this.isPointLight=!0,this.type="PointLight",this.distance=n,this.decay=s,this.shadow=new Zh}get power(){return this.intensity*4*Math.PI}set power(e){this.intensity=e/(4*Math.PI)}dispose(){super.dispose(),this.shadow.dispose()}copy(e,t){return super.copy(e,t),this.distance=e.distance,this.decay=e.decay,this.shadow=e.shadow.clone(),this}toJSON(e){let t=super.toJSON(e);return t.object.distance=this.distance,t.object.decay=this.decay,t.object.shadow=this.shadow.toJSON(),t}},Ns=class extends qo{constructor(e=-1,t=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=e,this.right=t,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.left=e.left,this.right=e.right,this.top=e.top,this.bottom=e.bottom,this.near=e.near,this.far=e.far,this.zoom=e.zoom,this.view=e.view===null?null:Object.assign({},e.view),this}setViewOffset(e,t,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=(this.right-this.left)/(2*this.zoom),t=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-e,o=n+e,a=s+t,c=s-t;if(this.view!==null&&this.view.enabled){let l=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=l*this.view.offsetX,o=r+l*this.view.width,a-=h*this.view.offsetY,c=a-h*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,c,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.zoom=this.zoom,t.object.left=this.left,t.object.right=this.right,t.object.top=this.top,t.object.bottom=this.bottom,t.object.near=this.near,t.object.far=this.far,this.view!==null&&(t.object.view=Object.assign({},this.view)),t}},Jh=class extends Ir{constructor(){super(new Ns(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},is=class extends ns{constructor(e,t){super(e,t),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(At.DEFAULT_UP),this.updateMatrix(),this.target=new At,this.shadow=new Jh}dispose(){super.dispose(),this.shadow.dispose()}copy(e){return super.copy(e),this.target=e.target.clone(),this.shadow=e.shadow.clone(),this}toJSON(e){let t=super.toJSON(e);return t.object.shadow=this.shadow.toJSON(),t.object.target=this.target.uuid,t}},Ko=class extends ns{constructor(e,t){super(e,t),this.isAmbientLight=!0,this.type="AmbientLight"}};var Fi=class{static extractUrlBase(e){let t=e.lastIndexOf("/");return t===-1?"./":e.slice(0,t+1)}static resolveURL(e,t){return typeof e!="string"||e===""?"":(/^https?:\/\//i.test(t)&&/^\//.test(e)&&(t=t.replace(/(^https?:\/\/[^\/]+).*/i,"$1")),/^(https?:)?\/\//i.test(e)||/^data:.*,.*$/i.test(e)||/^blob:.*$/i.test(e)?e:t+e)}};var Bh=new WeakMap,Zo=class extends fi{constructor(e){super(e),this.isImageBitmapLoader=!0,typeof createImageBitmap>"u"&&We("ImageBitmapLoader: createImageBitmap() not supported."),typeof fetch>"u"&&We("ImageBitmapLoader: fetch() not supported."),this.options={premultiplyAlpha:"none"},this._abortController=new AbortController}setOptions(e){return this.options=e,this}load(e,t,n,s){e===void 0&&(e=""),this.path!==void 0&&(e=this.path+e),e=this.manager.resolveURL(e);let r=this,o=ci.get(`image-bitmap:${e}`);if(o!==void 0){if(r.manager.itemStart(e),o.then){o.then(l=>{Bh.has(o)===!0?(s&&s(Bh.get(o)),r.manager.itemError(e),r.manager.itemEnd(e)):(t&&t(l),r.manager.itemEnd(e))});return}setTimeout(function(){t&&t(o),r.manager.itemEnd(e)},0);return}let a={};a.credentials=this.withCredentials||this.crossOrigin!=="anonymous"?"include":"same-origin",a.headers=this.requestHeader,a.priority=this.priority,a.cache=this.cache,a.signal=typeof AbortSignal.any=="function"?AbortSignal.any([this._abortController.signal,this.manager.abortController.signal]):this._abortController.signal;let c=fetch(e,a).then(function(l){return l.blob()}).then(function(l){return createImageBitmap(l,Object.assign({},r.options,{colorSpaceConversion:"none"}))}).then(function(l){return ci.add(`image-bitmap:${e}`,l),t&&t(l),r.manager.itemEnd(e),l}).catch(function(l){s&&s(l),Bh.set(c,l),ci.remove(`image-bitmap:${e}`),r.manager.itemError(e),r.manager.itemEnd(e)});ci.add(`image-bitmap:${e}`,c),r.manager.itemStart(e)}abort(){return this._abortController.abort(),this._abortController=new AbortController,this}};var cr=-90,hr=1,Pr=class extends At{constructor(e,t,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new Gt(cr,hr,e,t);s.layers=this.layers,this.add(s);let r=new Gt(cr,hr,e,t);r.layers=this.layers,this.add(r);let o=new Gt(cr,hr,e,t);o.layers=this.layers,this.add(o);let a=new Gt(cr,hr,e,t);a.layers=this.layers,this.add(a);let c=new Gt(cr,hr,e,t);c.layers=this.layers,this.add(c);let l=new Gt(cr,hr,e,t);l.layers=this.layers,this.add(l)}updateCoordinateSystem(){let e=this.coordinateSystem,t=this.children.concat(),[n,s,r,o,a,c]=t;for(let l of t)this.remove(l);if(e===Gn)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),c.up.set(0,1,0),c.lookAt(0,0,-1);else if(e===mr)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),c.up.set(0,-1,0),c.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+e);for(let l of t)this.add(l),l.updateMatrixWorld()}update(e,t){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==e.coordinateSystem&&(this.coordinateSystem=e.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,c,l,h]=this.children,d=e.getRenderTarget(),u=e.getActiveCubeFace(),f=e.getActiveMipmapLevel(),p=e.xr.enabled;e.xr.enabled=!1;let _=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let g=!1;e.isWebGLRenderer===!0?g=e.state.buffers.depth.getReversed():g=e.reversedDepthBuffer,e.setRenderTarget(n,0,s),g&&e.autoClear===!1&&e.clearDepth(),e.render(t,r),e.setRenderTarget(n,1,s),g&&e.autoClear===!1&&e.clearDepth(),e.render(t,o),e.setRenderTarget(n,2,s),g&&e.autoClear===!1&&e.clearDepth(),e.render(t,a),e.setRenderTarget(n,3,s),g&&e.autoClear===!1&&e.clearDepth(),e.render(t,c),e.setRenderTarget(n,4,s),g&&e.autoClear===!1&&e.clearDepth(),e.render(t,l),n.texture.mipmapsAutoUpdate=_,e.setRenderTarget(n,5,s),g&&e.autoClear===!1&&e.clearDepth(),e.render(t,h),e.setRenderTarget(d,u,f),e.xr.enabled=p,n.texture.needsPMREMUpdate=!0}},Ol=class extends Gt{constructor(e=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=e,this.perCameraFrustumCulled=!1}};var Du="\\[\\]\\.:\\/",yx=new RegExp("["+Du+"]","g"),Uu="[^"+Du+"]",vx="[^"+Du.replace("\\.","")+"]",bx=/((?:WC+[\/:])*)/.source.replace("WC",Uu),Mx=/(WCOD+)?/.source.replace("WCOD",vx),Sx=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",Uu),wx=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",Uu),Tx=new RegExp("^"+bx+Mx+Sx+wx+"$"),Ex=["material","materials","bones","map"],Qh=class{constructor(e,t,n){let s=n||St.parseTrackName(t);this._targetGroup=e,this._bindings=e.subscribe_(t,s)}getValue(e,t){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(e,t)}setValue(e,t){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(e,t)}bind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,n=e.length;t!==n;++t)e[t].bind()}unbind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,n=e.length;t!==n;++t)e[t].unbind()}},St=class i{constructor(e,t,n){this.path=t,this.parsedPath=n||i.parseTrackName(t),this.node=i.findNode(e,this.parsedPath.nodeName),this.rootNode=e,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(e,t,n){return e&&e.isAnimationObjectGroup?new i.Composite(e,t,n):new i(e,t,n)}static sanitizeNodeName(e){return e.replace(/\s/g,"_").replace(yx,"")}static parseTrackName(e){let t=Tx.exec(e);if(t===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+e);let n={nodeName:t[2],objectName:t[3],objectIndex:t[4],propertyName:t[5],propertyIndex:t[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);Ex.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+e);return n}static findNode(e,t){if(t===void 0||t===""||t==="."||t===-1||t===e.name||t===e.uuid)return e;if(e.skeleton){let n=e.skeleton.getBoneByName(t);if(n!==void 0)return n}if(e.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===t||a.uuid===t)return a;let c=n(a.children);if(c)return c}return null},s=n(e.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(e,t){e[t]=this.targetObject[this.propertyName]}_getValue_array(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)e[t++]=n[s]}_getValue_arrayElement(e,t){e[t]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(e,t){this.resolvedProperty.toArray(e,t)}_setValue_direct(e,t){this.targetObject[this.propertyName]=e[t]}_setValue_direct_setNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++]}_setValue_array_setNeedsUpdate(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(e,t){this.resolvedProperty[this.propertyIndex]=e[t]}_setValue_arrayElement_setNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(e,t){this.resolvedProperty.fromArray(e,t)}_setValue_fromArray_setNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(e,t){this.bind(),this.getValue(e,t)}_setValue_unbound(e,t){this.bind(),this.setValue(e,t)}bind(){let e=this.node,t=this.parsedPath,n=t.objectName,s=t.propertyName,r=t.propertyIndex;if(e||(e=i.findNode(this.rootNode,t.nodeName),this.node=e),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!e){We("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let l=t.objectIndex;switch(n){case"materials":if(!e.material){Je("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.materials){Je("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}e=e.material.materials;break;case"bones":if(!e.skeleton){Je("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}e=e.skeleton.bones;for(let h=0;h<e.length;h++)if(e[h].name===l){l=h;break}break;case"map":if("map"in e){e=e.map;break}if(!e.material){Je("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.map){Je("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}e=e.material.map;break;default:if(e[n]===void 0){Je("PropertyBinding: Can not bind to objectName of node undefined.",this);return}e=e[n]}if(l!==void 0){if(e[l]===void 0){Je("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,e);return}e=e[l]}}let o=e[s];if(o===void 0){let l=t.nodeName;Je("PropertyBinding: Trying to update property for track: "+l+"."+s+" but it wasn't found.",e);return}let a=this.Versioning.None;this.targetObject=e,e.isMaterial===!0?a=this.Versioning.NeedsUpdate:e.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let c=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!e.geometry){Je("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!e.geometry.morphAttributes){Je("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}e.morphTargetDictionary[r]!==void 0&&(r=e.morphTargetDictionary[r])}c=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(c=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(c=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[c],this.setValue=this.SetterByBindingTypeAndVersioning[c][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};St.Composite=Qh;St.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};St.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};St.prototype.GetterByBindingType=[St.prototype._getValue_direct,St.prototype._getValue_array,St.prototype._getValue_arrayElement,St.prototype._getValue_toArray];St.prototype.SetterByBindingTypeAndVersioning=[[St.prototype._setValue_direct,St.prototype._setValue_direct_setNeedsUpdate,St.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[St.prototype._setValue_array,St.prototype._setValue_array_setNeedsUpdate,St.prototype._setValue_array_setMatrixWorldNeedsUpdate],[St.prototype._setValue_arrayElement,St.prototype._setValue_arrayElement_setNeedsUpdate,St.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[St.prototype._setValue_fromArray,St.prototype._setValue_fromArray_setNeedsUpdate,St.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var mT=new Float32Array(1);var Lp=new je,Lr=class{constructor(e,t,n=0,s=1/0){this.ray=new hi(e,t),this.near=n,this.far=s,this.camera=null,this.layers=new yr,this.params={Mesh:{},Line:{threshold:1},LOD:{},Points:{threshold:1},Sprite:{}}}set(e,t){this.ray.set(e,t)}setFromCamera(e,t){t.isPerspectiveCamera?(this.ray.origin.setFromMatrixPosition(t.matrixWorld),this.ray.direction.set(e.x,e.y,.5).unproject(t).sub(this.ray.origin).normalize(),this.camera=t):t.isOrthographicCamera?(this.ray.origin.set(e.x,e.y,t.projectionMatrix.elements[14]).unproject(t),this.ray.direction.set(0,0,-1).transformDirection(t.matrixWorld),this.camera=t):Je("Raycaster: Unsupported camera type: "+t.type)}setFromXRController(e){return Lp.identity().extractRotation(e.matrixWorld),this.ray.origin.setFromMatrixPosition(e.matrixWorld),this.ray.direction.set(0,0,-1).applyMatrix4(Lp),this}intersectObject(e,t=!0,n=[]){return eu(e,this,n,t),n.sort(Np),n}intersectObjects(e,t=!0,n=[]){for(let s=0,r=e.length;s<r;s++)eu(e[s],this,n,t);return n.sort(Np),n}};function Np(i,e){return i.distance-e.distance}function eu(i,e,t,n){let s=!0;if(i.layers.test(e.layers)&&i.raycast(e,t)===!1&&(s=!1),s===!0&&n===!0){let r=i.children;for(let o=0,a=r.length;o<a;o++)eu(r[o],e,t,!0)}}var ss=class{constructor(e=1,t=0,n=0){this.radius=e,this.phi=t,this.theta=n}set(e,t,n){return this.radius=e,this.phi=t,this.theta=n,this}copy(e){return this.radius=e.radius,this.phi=e.phi,this.theta=e.theta,this}makeSafe(){return this.phi=ot(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(e){return this.setFromCartesianCoords(e.x,e.y,e.z)}setFromCartesianCoords(e,t,n){return this.radius=Math.sqrt(e*e+t*t+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(e,n),this.phi=Math.acos(ot(t/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var Hu=class Hu{constructor(e,t,n,s){this.elements=[1,0,0,1],e!==void 0&&this.set(e,t,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(e,t=0){for(let n=0;n<4;n++)this.elements[n]=e[n+t];return this}set(e,t,n,s){let r=this.elements;return r[0]=e,r[2]=t,r[1]=n,r[3]=s,this}};Hu.prototype.isMatrix2=!0;var tu=Hu;var Jo=class extends ti{constructor(e,t=null){super(),this.object=e,this.domElement=t,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(e){this.domElement!==null&&this.disconnect(),this.domElement=e}disconnect(){}dispose(){}update(){}};function Ou(i,e,t,n){let s=Ax(n);switch(t){case vu:return i*e;case $l:return i*e/s.components*s.byteLength;case Xl:return i*e/s.components*s.byteLength;case as:return i*e*2/s.components*s.byteLength;case ql:return i*e*2/s.components*s.byteLength;case bu:return i*e*3/s.components*s.byteLength;case $n:return i*e*4/s.components*s.byteLength;case Yl:return i*e*4/s.components*s.byteLength;case ea:case ta:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*8;case na:case ia:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case Kl:case Jl:return Math.max(i,16)*Math.max(e,8)/4;case jl:case Zl:return Math.max(i,8)*Math.max(e,8)/2;case Ql:case ec:case nc:case ic:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*8;case tc:case sa:case sc:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case rc:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case oc:return Math.floor((i+4)/5)*Math.floor((e+3)/4)*16;case ac:return Math.floor((i+4)/5)*Math.floor((e+4)/5)*16;case lc:return Math.floor((i+5)/6)*Math.floor((e+4)/5)*16;case cc:return Math.floor((i+5)/6)*Math.floor((e+5)/6)*16;case hc:return Math.floor((i+7)/8)*Math.floor((e+4)/5)*16;case uc:return Math.floor((i+7)/8)*Math.floor((e+5)/6)*16;case dc:return Math.floor((i+7)/8)*Math.floor((e+7)/8)*16;case fc:return Math.floor((i+9)/10)*Math.floor((e+4)/5)*16;case pc:return Math.floor((i+9)/10)*Math.floor((e+5)/6)*16;case mc:return Math.floor((i+9)/10)*Math.floor((e+7)/8)*16;case gc:return Math.floor((i+9)/10)*Math.floor((e+9)/10)*16;case _c:return Math.floor((i+11)/12)*Math.floor((e+9)/10)*16;case xc:return Math.floor((i+11)/12)*Math.floor((e+11)/12)*16;case yc:case vc:case bc:return Math.ceil(i/4)*Math.ceil(e/4)*16;case Mc:case Sc:return Math.ceil(i/4)*Math.ceil(e/4)*8;case ra:case wc:return Math.ceil(i/4)*Math.ceil(e/4)*16}throw new Error(`Unable to determine texture byte length for ${t} format.`)}function Ax(i){switch(i){case Rn:case gu:return{byteLength:1,components:1};case Fr:case _u:case si:return{byteLength:2,components:1};case Vl:case Wl:return{byteLength:2,components:4};case ii:case Gl:case Fn:return{byteLength:4,components:1};case xu:case yu:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:Bl}}));typeof window<"u"&&(window.__THREE__?We("WARNING: Multiple instances of Three.js being imported."):window.__THREE__=Bl);/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */function Xm(){let i=null,e=!1,t=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),t(r,o)}return{start:function(){e!==!0&&t!==null&&i!==null&&(n=i.requestAnimationFrame(s),e=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),e=!1},setAnimationLoop:function(r){t=r},setContext:function(r){i=r}}}function Rx(i){let e=new WeakMap;function t(a,c){let l=a.array,h=a.usage,d=l.byteLength,u=i.createBuffer();i.bindBuffer(c,u),i.bufferData(c,l,h),a.onUploadCallback();let f;if(l instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&l instanceof Float16Array)f=i.HALF_FLOAT;else if(l instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(l instanceof Int16Array)f=i.SHORT;else if(l instanceof Uint32Array)f=i.UNSIGNED_INT;else if(l instanceof Int32Array)f=i.INT;else if(l instanceof Int8Array)f=i.BYTE;else if(l instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(l instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+l);return{buffer:u,type:f,bytesPerElement:l.BYTES_PER_ELEMENT,version:a.version,size:d}}function n(a,c,l){let h=c.array,d=c.updateRanges;if(i.bindBuffer(l,a),d.length===0)i.bufferSubData(l,0,h);else{d.sort((f,p)=>f.start-p.start);let u=0;for(let f=1;f<d.length;f++){let p=d[u],_=d[f];_.start<=p.start+p.count+1?p.count=Math.max(p.count,_.start+_.count-p.start):(++u,d[u]=_)}d.length=u+1;for(let f=0,p=d.length;f<p;f++){let _=d[f];i.bufferSubData(l,_.start*h.BYTES_PER_ELEMENT,h,_.start,_.count)}c.clearUpdateRanges()}c.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),e.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let c=e.get(a);c&&(i.deleteBuffer(c.buffer),e.delete(a))}function o(a,c){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let h=e.get(a);(!h||h.version<a.version)&&e.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let l=e.get(a);if(l===void 0)e.set(a,t(a,c));else if(l.version<a.version){if(l.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(l.buffer,a,c),l.version=a.version}}return{get:s,remove:r,update:o}}var Cx=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,Ix=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,Px=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,Lx=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Nx=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,Dx=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,Ux=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,Ox=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,Fx=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,Bx=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,kx=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,zx=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,Hx=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,Gx=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,Vx=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,Wx=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,$x=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,Xx=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,qx=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,Yx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,jx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,Kx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,Zx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,Jx=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,Qx=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,ey=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,ty=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,ny=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,iy=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,sy="gl_FragColor = linearToOutputTexel( gl_FragColor );",ry=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,oy=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,ay=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,ly=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,cy=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,hy=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,uy=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,dy=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,fy=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,py=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,my=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,gy=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,_y=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,xy=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,yy=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,vy=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,by=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,My=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,Sy=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,wy=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,Ty=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,Ey=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,Ay=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,Ry=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,Cy=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,Iy=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,Py=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Ly=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Ny=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Dy=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,Uy=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,Oy=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,Fy=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,By=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,ky=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,zy=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,Hy=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,Gy=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,Vy=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Wy=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,$y=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Xy=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,qy=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,Yy=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,jy=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Ky=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,Zy=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,Jy=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,Qy=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,ev=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,tv=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,nv=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,iv=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,sv=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,rv=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,ov=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,av=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,lv=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,cv=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,hv=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,uv=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,dv=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,fv=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,pv=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,mv=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,gv=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,_v=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,xv=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,yv=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,vv=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,bv=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,Mv=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,Sv=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,wv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,Tv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,Ev=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,Av=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,Rv=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,Cv=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Iv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Pv=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Lv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Nv=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Dv=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,Uv=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,Ov=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,Fv=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,Bv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,kv=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,zv=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,Hv=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,Gv=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,Vv=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,Wv=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,$v=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,Xv=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,qv=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,Yv=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,jv=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,Kv=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,Zv=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,Jv=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,Qv=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,eb=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,tb=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,nb=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,ib=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,sb=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,rb=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,ob=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,ab=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,lt={alphahash_fragment:Cx,alphahash_pars_fragment:Ix,alphamap_fragment:Px,alphamap_pars_fragment:Lx,alphatest_fragment:Nx,alphatest_pars_fragment:Dx,aomap_fragment:Ux,aomap_pars_fragment:Ox,batching_pars_vertex:Fx,batching_vertex:Bx,begin_vertex:kx,beginnormal_vertex:zx,bsdfs:Hx,iridescence_fragment:Gx,bumpmap_pars_fragment:Vx,clipping_planes_fragment:Wx,clipping_planes_pars_fragment:$x,clipping_planes_pars_vertex:Xx,clipping_planes_vertex:qx,color_fragment:Yx,color_pars_fragment:jx,color_pars_vertex:Kx,color_vertex:Zx,common:Jx,defaultnormal_vertex:Qx,displacementmap_pars_vertex:ey,displacementmap_vertex:ty,emissivemap_fragment:ny,emissivemap_pars_fragment:iy,colorspace_fragment:sy,colorspace_pars_fragment:ry,envmap_fragment:oy,envmap_common_pars_fragment:ay,envmap_pars_fragment:ly,envmap_pars_vertex:cy,envmap_physical_pars_fragment:vy,envmap_vertex:hy,fog_vertex:uy,fog_pars_vertex:dy,fog_fragment:fy,fog_pars_fragment:py,gradientmap_pars_fragment:my,lightmap_pars_fragment:gy,lights_lambert_fragment:_y,lights_lambert_pars_fragment:xy,lights_pars_begin:yy,lights_toon_fragment:by,lights_toon_pars_fragment:My,lights_phong_fragment:Sy,lights_phong_pars_fragment:wy,lights_physical_fragment:Ty,lights_physical_pars_fragment:Ey,lights_fragment_begin:Ay,lights_fragment_maps:Ry,lights_fragment_end:Cy,lightprobes_pars_fragment:Iy,logdepthbuf_fragment:Py,logdepthbuf_pars_fragment:Ly,logdepthbuf_pars_vertex:Ny,logdepthbuf_vertex:Dy,map_fragment:Uy,map_pars_fragment:Oy,map_particle_fragment:Fy,map_particle_pars_fragment:By,metalnessmap_fragment:ky,metalnessmap_pars_fragment:zy,morphinstance_vertex:Hy,morphcolor_vertex:Gy,morphnormal_vertex:Vy,morphtarget_pars_vertex:Wy,morphtarget_vertex:$y,normal_fragment_begin:Xy,normal_fragment_maps:qy,normal_pars_fragment:Yy,normal_pars_vertex:jy,normal_vertex:Ky,normalmap_pars_fragment:Zy,clearcoat_normal_fragment_begin:Jy,clearcoat_normal_fragment_maps:Qy,clearcoat_pars_fragment:ev,iridescence_pars_fragment:tv,opaque_fragment:nv,packing:iv,premultiplied_alpha_fragment:sv,project_vertex:rv,dithering_fragment:ov,dithering_pars_fragment:av,roughnessmap_fragment:lv,roughnessmap_pars_fragment:cv,shadowmap_pars_fragment:hv,shadowmap_pars_vertex:uv,shadowmap_vertex:dv,shadowmask_pars_fragment:fv,skinbase_vertex:pv,skinning_pars_vertex:mv,skinning_vertex:gv,skinnormal_vertex:_v,specularmap_fragment:xv,specularmap_pars_fragment:yv,tonemapping_fragment:vv,tonemapping_pars_fragment:bv,transmission_fragment:Mv,transmission_pars_fragment:Sv,uv_pars_fragment:wv,uv_pars_vertex:Tv,uv_vertex:Ev,worldpos_vertex:Av,background_vert:Rv,background_frag:Cv,backgroundCube_vert:Iv,backgroundCube_frag:Pv,cube_vert:Lv,cube_frag:Nv,depth_vert:Dv,depth_frag:Uv,distance_vert:Ov,distance_frag:Fv,equirect_vert:Bv,equirect_frag:kv,linedashed_vert:zv,linedashed_frag:Hv,meshbasic_vert:Gv,meshbasic_frag:Vv,meshlambert_vert:Wv,meshlambert_frag:$v,meshmatcap_vert:Xv,meshmatcap_frag:qv,meshnormal_vert:Yv,meshnormal_frag:jv,meshphong_vert:Kv,meshphong_frag:Zv,meshphysical_vert:Jv,meshphysical_frag:Qv,meshtoon_vert:eb,meshtoon_frag:tb,points_vert:nb,points_frag:ib,shadow_vert:sb,shadow_frag:rb,sprite_vert:ob,sprite_frag:ab},Le={common:{diffuse:{value:new Ge(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new tt},alphaMap:{value:null},alphaMapTransform:{value:new tt},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new tt}},envmap:{envMap:{value:null},envMapRotation:{value:new tt},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new tt}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new tt}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new tt},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new tt},normalScale:{value:new xe(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new tt},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new tt}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new tt}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new tt}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new Ge(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new Ge(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new tt},alphaTest:{value:0},uvTransform:{value:new tt}},sprite:{diffuse:{value:new Ge(16777215)},opacity:{value:1},center:{value:new xe(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new tt},alphaMap:{value:null},alphaMapTransform:{value:new tt},alphaTest:{value:0}}},mi={basic:{uniforms:hn([Le.common,Le.specularmap,Le.envmap,Le.aomap,Le.lightmap,Le.fog]),vertexShader:lt.meshbasic_vert,fragmentShader:lt.meshbasic_frag},lambert:{uniforms:hn([Le.common,Le.specularmap,Le.envmap,Le.aomap,Le.lightmap,Le.emissivemap,Le.bumpmap,Le.normalmap,Le.displacementmap,Le.fog,Le.lights,{emissive:{value:new Ge(0)},envMapIntensity:{value:1}}]),vertexShader:lt.meshlambert_vert,fragmentShader:lt.meshlambert_frag},phong:{uniforms:hn([Le.common,Le.specularmap,Le.envmap,Le.aomap,Le.lightmap,Le.emissivemap,Le.bumpmap,Le.normalmap,Le.displacementmap,Le.fog,Le.lights,{emissive:{value:new Ge(0)},specular:{value:new Ge(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:lt.meshphong_vert,fragmentShader:lt.meshphong_frag},standard:{uniforms:hn([Le.common,Le.envmap,Le.aomap,Le.lightmap,Le.emissivemap,Le.bumpmap,Le.normalmap,Le.displacementmap,Le.roughnessmap,Le.metalnessmap,Le.fog,Le.lights,{emissive:{value:new Ge(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:lt.meshphysical_vert,fragmentShader:lt.meshphysical_frag},toon:{uniforms:hn([Le.common,Le.aomap,Le.lightmap,Le.emissivemap,Le.bumpmap,Le.normalmap,Le.displacementmap,Le.gradientmap,Le.fog,Le.lights,{emissive:{value:new Ge(0)}}]),vertexShader:lt.meshtoon_vert,fragmentShader:lt.meshtoon_frag},matcap:{uniforms:hn([Le.common,Le.bumpmap,Le.normalmap,Le.displacementmap,Le.fog,{matcap:{value:null}}]),vertexShader:lt.meshmatcap_vert,fragmentShader:lt.meshmatcap_frag},points:{uniforms:hn([Le.points,Le.fog]),vertexShader:lt.points_vert,fragmentShader:lt.points_frag},dashed:{uniforms:hn([Le.common,Le.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:lt.linedashed_vert,fragmentShader:lt.linedashed_frag},depth:{uniforms:hn([Le.common,Le.displacementmap]),vertexShader:lt.depth_vert,fragmentShader:lt.depth_frag},normal:{uniforms:hn([Le.common,Le.bumpmap,Le.normalmap,Le.displacementmap,{opacity:{value:1}}]),vertexShader:lt.meshnormal_vert,fragmentShader:lt.meshnormal_frag},sprite:{uniforms:hn([Le.sprite,Le.fog]),vertexShader:lt.sprite_vert,fragmentShader:lt.sprite_frag},background:{uniforms:{uvTransform:{value:new tt},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:lt.background_vert,fragmentShader:lt.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new tt}},vertexShader:lt.backgroundCube_vert,fragmentShader:lt.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:lt.cube_vert,fragmentShader:lt.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:lt.equirect_vert,fragmentShader:lt.equirect_frag},distance:{uniforms:hn([Le.common,Le.displacementmap,{referencePosition:{value:new L},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:lt.distance_vert,fragmentShader:lt.distance_frag},shadow:{uniforms:hn([Le.lights,Le.fog,{color:{value:new Ge(0)},opacity:{value:1}}]),vertexShader:lt.shadow_vert,fragmentShader:lt.shadow_frag}};mi.physical={uniforms:hn([mi.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new tt},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new tt},clearcoatNormalScale:{value:new xe(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new tt},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new tt},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new tt},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new tt},sheen:{value:0},sheenColor:{value:new Ge(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new tt},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new tt},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new tt},transmissionSamplerSize:{value:new xe},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new tt},attenuationDistance:{value:0},attenuationColor:{value:new Ge(0)},specularColor:{value:new Ge(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new tt},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new tt},anisotropyVector:{value:new xe},anisotropyMap:{value:null},anisotropyMapTransform:{value:new tt}}]),vertexShader:lt.meshphysical_vert,fragmentShader:lt.meshphysical_frag};var Ec={r:0,b:0,g:0},lb=new je,qm=new tt;qm.set(-1,0,0,0,1,0,0,0,1);function cb(i,e,t,n,s,r){let o=new Ge(0),a=s===!0?0:1,c,l,h=null,d=0,u=null;function f(v){let M=v.isScene===!0?v.background:null;if(M&&M.isTexture){let b=v.backgroundBlurriness>0;M=e.get(M,b)}return M}function p(v){let M=!1,b=f(v);b===null?g(o,a):b&&b.isColor&&(g(b,1),M=!0);let S=i.xr.getEnvironmentBlendMode();S==="additive"?t.buffers.color.setClear(0,0,0,1,r):S==="alpha-blend"&&t.buffers.color.setClear(0,0,0,0,r),(i.autoClear||M)&&(t.buffers.depth.setTest(!0),t.buffers.depth.setMask(!0),t.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function _(v,M){let b=f(M);b&&b.isCubeTexture?(l===void 0&&(l=new Ut(new Pi(1,1,1),new ui({name:"BackgroundCubeMaterial",uniforms:Hs(mi.backgroundCube.uniforms),vertexShader:mi.backgroundCube.vertexShader,fragmentShader:mi.backgroundCube.fragmentShader,side:yn,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),l.geometry.deleteAttribute("uv"),l.onBeforeRender=function(S,T,y){this.matrixWorld.copyPosition(y.matrixWorld)},Object.defineProperty(l.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(l)),l.material.uniforms.envMap.value=b,l.material.uniforms.backgroundBlurriness.value=M.backgroundBlurriness,l.material.uniforms.backgroundIntensity.value=M.backgroundIntensity,l.material.uniforms.backgroundRotation.value.setFromMatrix4(lb.makeRotationFromEuler(M.backgroundRotation)).transpose(),b.isRenderTargetTexture===!1&&l.material.uniforms.backgroundRotation.value.premultiply(qm),l.material.toneMapped=ht.getTransfer(b.colorSpace)!==vt,(h!==b||d!==b.version||u!==i.toneMapping)&&(l.material.needsUpdate=!0,h=b,d=b.version,u=i.toneMapping),l.layers.enableAll(),v.unshift(l,l.geometry,l.material,0,0,null)):b&&b.isTexture&&(c===void 0&&(c=new Ut(new zo(2,2),new ui({name:"BackgroundMaterial",uniforms:Hs(mi.background.uniforms),vertexShader:mi.background.vertexShader,fragmentShader:mi.background.fragmentShader,side:An,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),Object.defineProperty(c.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(c)),c.material.uniforms.t2D.value=b,c.material.uniforms.backgroundIntensity.value=M.backgroundIntensity,c.material.toneMapped=ht.getTransfer(b.colorSpace)!==vt,b.matrixAutoUpdate===!0&&b.updateMatrix(),c.material.uniforms.uvTransform.value.copy(b.matrix),(h!==b||d!==b.version||u!==i.toneMapping)&&(c.material.needsUpdate=!0,h=b,d=b.version,u=i.toneMapping),c.layers.enableAll(),v.unshift(c,c.geometry,c.material,0,0,null))}function g(v,M){v.getRGB(Ec,Nu(i)),t.buffers.color.setClear(Ec.r,Ec.g,Ec.b,M,r)}function m(){l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0),c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0)}return{getClearColor:function(){return o},setClearColor:function(v,M=1){o.set(v),a=M,g(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(v){a=v,g(o,a)},render:p,addToRenderList:_,dispose:m}}function hb(i,e){let t=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=u(null),r=s,o=!1;function a(D,$,J,P,k){let re=!1,Y=d(D,P,J,$);r!==Y&&(r=Y,l(r.object)),re=f(D,P,J,k),re&&p(D,P,J,k),k!==null&&e.update(k,i.ELEMENT_ARRAY_BUFFER),(re||o)&&(o=!1,b(D,$,J,P),k!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,e.get(k).buffer))}function c(){return i.createVertexArray()}function l(D){return i.bindVertexArray(D)}function h(D){return i.deleteVertexArray(D)}function d(D,$,J,P){let k=P.wireframe===!0,re=n[$.id];re===void 0&&(re={},n[$.id]=re);let Y=D.isInstancedMesh===!0?D.id:0,me=re[Y];me===void 0&&(me={},re[Y]=me);let se=me[J.id];se===void 0&&(se={},me[J.id]=se);let ce=se[k];return ce===void 0&&(ce=u(c()),se[k]=ce),ce}function u(D){let $=[],J=[],P=[];for(let k=0;k<t;k++)$[k]=0,J[k]=0,P[k]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:$,enabledAttributes:J,attributeDivisors:P,object:D,attributes:{},index:null}}function f(D,$,J,P){let k=r.attributes,re=$.attributes,Y=0,me=J.getAttributes();for(let se in me)if(me[se].location>=0){let ue=k[se],Pe=re[se];if(Pe===void 0&&(se==="instanceMatrix"&&D.instanceMatrix&&(Pe=D.instanceMatrix),se==="instanceColor"&&D.instanceColor&&(Pe=D.instanceColor)),ue===void 0||ue.attribute!==Pe||Pe&&ue.data!==Pe.data)return!0;Y++}return r.attributesNum!==Y||r.index!==P}function p(D,$,J,P){let k={},re=$.attributes,Y=0,me=J.getAttributes();for(let se in me)if(me[se].location>=0){let ue=re[se];ue===void 0&&(se==="instanceMatrix"&&D.instanceMatrix&&(ue=D.instanceMatrix),se==="instanceColor"&&D.instanceColor&&(ue=D.instanceColor));let Pe={};Pe.attribute=ue,ue&&ue.data&&(Pe.data=ue.data),k[se]=Pe,Y++}r.attributes=k,r.attributesNum=Y,r.index=P}function _(){let D=r.newAttributes;for(let $=0,J=D.length;$<J;$++)D[$]=0}function g(D){m(D,0)}function m(D,$){let J=r.newAttributes,P=r.enabledAttributes,k=r.attributeDivisors;J[D]=1,P[D]===0&&(i.enableVertexAttribArray(D),P[D]=1),k[D]!==$&&(i.vertexAttribDivisor(D,$),k[D]=$)}function v(){let D=r.newAttributes,$=r.enabledAttributes;for(let J=0,P=$.length;J<P;J++)$[J]!==D[J]&&(i.disableVertexAttribArray(J),$[J]=0)}function M(D,$,J,P,k,re,Y){Y===!0?i.vertexAttribIPointer(D,$,J,k,re):i.vertexAttribPointer(D,$,J,P,k,re)}function b(D,$,J,P){_();let k=P.attributes,re=J.getAttributes(),Y=$.defaultAttributeValues;for(let me in re){let se=re[me];if(se.location>=0){let ce=k[me];if(ce===void 0&&(me==="instanceMatrix"&&D.instanceMatrix&&(ce=D.instanceMatrix),me==="instanceColor"&&D.instanceColor&&(ce=D.instanceColor)),ce!==void 0){let ue=ce.normalized,Pe=ce.itemSize,ne=e.get(ce);if(ne===void 0)continue;let H=ne.buffer,le=ne.type,we=ne.bytesPerElement,Ue=le===i.INT||le===i.UNSIGNED_INT||ce.gpuType===Gl;if(ce.isInterleavedBufferAttribute){let Se=ce.data,Oe=Se.isInterleavedBuffer===!0?Se.stride:Se.itemSize,ct=ce.offset;if(Se.isInstancedInterleavedBuffer||Se.isInstancedBufferAttribute){for(let Xe=0;Xe<se.locationSize;Xe++)m(se.location+Xe,Se.meshPerAttribute);D.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=Se.meshPerAttribute*Se.count)}else for(let Xe=0;Xe<se.locationSize;Xe++)g(se.location+Xe);i.bindBuffer(i.ARRAY_BUFFER,H);for(let Xe=0;Xe<se.locationSize;Xe++)M(se.location+Xe,Pe/se.locationSize,le,ue,Oe*we,(ct+Pe/se.locationSize*Xe)*we,Ue)}else{if(ce.isInstancedBufferAttribute){for(let Se=0;Se<se.locationSize;Se++)m(se.location+Se,ce.meshPerAttribute);D.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=ce.meshPerAttribute*ce.count)}else for(let Se=0;Se<se.locationSize;Se++)g(se.location+Se);i.bindBuffer(i.ARRAY_BUFFER,H);for(let Se=0;Se<se.locationSize;Se++)M(se.location+Se,Pe/se.locationSize,le,ue,Pe*we,Pe/se.locationSize*Se*we,Ue)}}else if(Y!==void 0){let ue=Y[me];if(ue!==void 0)switch(ue.length){case 2:i.vertexAttrib2fv(se.location,ue);break;case 3:i.vertexAttrib3fv(se.location,ue);break;case 4:i.vertexAttrib4fv(se.location,ue);break;default:i.vertexAttrib1fv(se.location,ue)}}}}v()}function S(){F();for(let D in n){let $=n[D];for(let J in $){let P=$[J];for(let k in P){let re=P[k];for(let Y in re)h(re[Y].object),delete re[Y];delete P[k]}}delete n[D]}}function T(D){if(n[D.id]===void 0)return;let $=n[D.id];for(let J in $){let P=$[J];for(let k in P){let re=P[k];for(let Y in re)h(re[Y].object),delete re[Y];delete P[k]}}delete n[D.id]}function y(D){for(let $ in n){let J=n[$];for(let P in J){let k=J[P];if(k[D.id]===void 0)continue;let re=k[D.id];for(let Y in re)h(re[Y].object),delete re[Y];delete k[D.id]}}}function w(D){for(let $ in n){let J=n[$],P=D.isInstancedMesh===!0?D.id:0,k=J[P];if(k!==void 0){for(let re in k){let Y=k[re];for(let me in Y)h(Y[me].object),delete Y[me];delete k[re]}delete J[P],Object.keys(J).length===0&&delete n[$]}}}function F(){I(),o=!0,r!==s&&(r=s,l(r.object))}function I(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:F,resetDefaultState:I,dispose:S,releaseStatesOfGeometry:T,releaseStatesOfObject:w,releaseStatesOfProgram:y,initAttributes:_,enableAttribute:g,disableUnusedAttributes:v}}function ub(i,e,t){let n;function s(c){n=c}function r(c,l){i.drawArrays(n,c,l),t.update(l,n,1)}function o(c,l,h){h!==0&&(i.drawArraysInstanced(n,c,l,h),t.update(l,n,h))}function a(c,l,h){if(h===0)return;e.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,c,0,l,0,h);let u=0;for(let f=0;f<h;f++)u+=l[f];t.update(u,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function db(i,e,t,n){let s;function r(){if(s!==void 0)return s;if(e.has("EXT_texture_filter_anisotropic")===!0){let y=e.get("EXT_texture_filter_anisotropic");s=i.getParameter(y.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(y){return!(y!==$n&&n.convert(y)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(y){let w=y===si&&(e.has("EXT_color_buffer_half_float")||e.has("EXT_color_buffer_float"));return!(y!==Rn&&y!==Fn&&!w&&n.convert(y)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function c(y){if(y==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";y="mediump"}return y==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let l=t.precision!==void 0?t.precision:"highp",h=c(l);h!==l&&(We("WebGLRenderer:",l,"not supported, using",h,"instead."),l=h);let d=t.reversedDepthBuffer===!0&&e.has("EXT_clip_control"),u=t.logarithmicDepthBuffer===!0&&d===!1;t.reversedDepthBuffer===!0&&d===!1&&We("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),t.logarithmicDepthBuffer===!0&&d===!0&&We("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),p=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),_=i.getParameter(i.MAX_TEXTURE_SIZE),g=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),m=i.getParameter(i.MAX_VERTEX_ATTRIBS),v=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),M=i.getParameter(i.MAX_VARYING_VECTORS),b=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),S=i.getParameter(i.MAX_SAMPLES),T=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:c,textureFormatReadable:o,textureTypeReadable:a,precision:l,logarithmicDepthBuffer:u,reversedDepthBuffer:d,maxTextures:f,maxVertexTextures:p,maxTextureSize:_,maxCubemapSize:g,maxAttributes:m,maxVertexUniforms:v,maxVaryings:M,maxFragmentUniforms:b,maxSamples:S,samples:T}}function fb(i){let e=this,t=null,n=0,s=!1,r=!1,o=new gn,a=new tt,c={value:null,needsUpdate:!1};this.uniform=c,this.numPlanes=0,this.numIntersection=0,this.init=function(d,u){let f=d.length!==0||u||n!==0||s;return s=u,n=d.length,f},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(d,u){t=h(d,u,0)},this.setState=function(d,u,f){let p=d.clippingPlanes,_=d.clipIntersection,g=d.clipShadows,m=i.get(d);if(!s||p===null||p.length===0||r&&!g)r?h(null):l();else{let v=r?0:n,M=v*4,b=m.clippingState||null;c.value=b,b=h(p,u,M,f);for(let S=0;S!==M;++S)b[S]=t[S];m.clippingState=b,this.numIntersection=_?this.numPlanes:0,this.numPlanes+=v}};function l(){c.value!==t&&(c.value=t,c.needsUpdate=n>0),e.numPlanes=n,e.numIntersection=0}function h(d,u,f,p){let _=d!==null?d.length:0,g=null;if(_!==0){if(g=c.value,p!==!0||g===null){let m=f+_*4,v=u.matrixWorldInverse;a.getNormalMatrix(v),(g===null||g.length<m)&&(g=new Float32Array(m));for(let M=0,b=f;M!==_;++M,b+=4)o.copy(d[M]).applyMatrix4(v,a),o.normal.toArray(g,b),g[b+3]=o.constant}c.value=g,c.needsUpdate=!0}return e.numPlanes=_,e.numIntersection=0,g}}var ca=class extends Un{constructor(e=1,t={}){super(e,e,t),this.isWebGLCubeRenderTarget=!0;let n={width:e,height:e,depth:1},s=[n,n,n,n,n,n];this.texture=new Ao(s),this._setTextureOptions(t),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(e,t){this.texture.type=t.type,this.texture.colorSpace=t.colorSpace,this.texture.generateMipmaps=t.generateMipmaps,this.texture.minFilter=t.minFilter,this.texture.magFilter=t.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new Pi(5,5,5),r=new ui({name:"CubemapFromEquirect",uniforms:Hs(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:yn,blending:Us});r.uniforms.tEquirect.value=t;let o=new Ut(s,r),a=t.minFilter;return t.minFilter===Wn&&(t.minFilter=Vt),new Pr(1,10,this).update(e,o),t.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(e,t=!0,n=!0,s=!0){let r=e.getRenderTarget();for(let o=0;o<6;o++)e.setRenderTarget(this,o),e.clear(t,n,s);e.setRenderTarget(r)}},Tm=256,pb=3,mb=20,Ym=256,jm=16,gb=3,_b=new L,xb=new Ge,Rc=class i{constructor(e){this._renderer=e,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new Pr(1,10,null),this._boxMesh=new Ut(new Pi(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(e,t=0,n=.1,s=100,r={}){let{size:o=256,position:a=_b}=r,c=this._renderer;this._setSize(o);let l=this._allocateTarget(),h=this._getSourceTarget(!0);t>0&&(h.texture.mipmapsAutoUpdate=!1);let d=c.autoClear,u=c.autoClearColor,f=c.autoClearDepth,p=c.autoClearStencil,_=e.background;c.autoClear=!0,c.autoClearColor=!0,c.autoClearDepth=!0,c.autoClearStencil=!0,_===null&&(e.background=c.getClearColor(xb));let g=new Pr(n,s,h);return g.position.copy(a),g.update(c,e),c.autoClear=d,c.autoClearColor=u,c.autoClearDepth=f,c.autoClearStencil=p,e.background=_,t>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(l,t)),this._applyPMREM(l),l}fromEquirectangular(e,t=null){return this._fromTexture(e,t)}fromCubemap(e,t=null){return this._fromTexture(e,t)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=Rm(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Am(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(e,t){return t>0?1-Math.sqrt(1-e/t):0}_setSize(e){this._cubeSize=Math.max(Tm,Cu(e))}_fromTexture(e,t){e.mapping===Fs||e.mapping===Ur?this._setSize(e.image.length===0?Tm:e.image[0].width||e.image[0].image.width):this._setSize(e.image.width/4);let n=t||this._allocateTarget();return this._textureToCubemap(e),this._applyPMREM(n),n}_allocateTarget(){let e=this._cubeSize,t=Em(e,!1,!1),n=Math.log2(e)-pb;for(let s=0;s<=n;s++)t.texture.mipmaps.push({width:e>>s,height:e>>s});return t.texture.name="PMREM",t.texture.isPMREMTexture=!0,t}_getSourceTarget(e=!1){let t=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==t||e&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=Em(t,!0,e)),this._sourceTarget}_compileMaterial(e){this._boxMesh.material=e,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(e,t,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=e,r.activeMipmapLevel=t;let o=e.width>>t;e.viewport.set(0,0,o,o),r.update(this._renderer,s),e.viewport.set(0,0,e.width,e.height)}_textureToCubemap(e){let t;e.mapping===Fs||e.mapping===Ur?(this._cubemapMaterial===null&&(this._cubemapMaterial=Rm()),t=this._cubemapMaterial,t.uniforms.flipEnvMap.value=e.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Am()),t=this._equirectMaterial),t.uniforms.envMap.value=e,this._renderCube(this._getSourceTarget(),0,t)}_applyPMREM(e){this._ggxMaterial===null&&(this._ggxMaterial=yb(),this._integrationMaterial=vb());let t=this._cubeSize,n=e.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(t/jm);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-gb)r.roughness.value=a,this._renderCube(e,o,this._integrationMaterial);else{let c=a>0?Math.log2(t)+.5*Math.log2(6/(Ym*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=c,this._renderCube(e,o,this._ggxMaterial)}}}_blur(e,t){this._blurMaterial===null&&(this._blurMaterial=bb());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(t,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(e,0,n),s.envMap.value=e.texture,this._renderCube(r,0,n)}};function Em(i,e,t){return new ca(i,{minFilter:Wn,generateMipmaps:e,type:si,colorSpace:_n,depthBuffer:t})}function ha(i,e,t){return new ui({name:i,uniforms:e,vertexShader:lt.cube_vert,fragmentShader:t,side:yn,blending:Us,depthTest:!1,depthWrite:!1})}function yb(){return ha("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Ym}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function vb(){return ha("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:jm}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function bb(){return ha("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${mb}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function Am(){return ha("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function Rm(){return ha("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function Mb(i){let e=new WeakMap,t=new WeakMap,n=null;function s(u,f=!1){return u==null?null:f?o(u):r(u)}function r(u){if(u&&u.isTexture){let f=u.mapping;if(f===kl||f===zl)if(e.has(u)){let p=e.get(u).texture;return a(p,u.mapping)}else{let p=u.image;if(p&&p.height>0){let _=new ca(p.height);return _.fromEquirectangularTexture(i,u),e.set(u,_),u.addEventListener("dispose",l),a(_.texture,u.mapping)}else return null}}return u}function o(u){if(u&&u.isTexture&&u.isPMREMTexture!==!0){let f=u.mapping,p=f===kl||f===zl,_=f===Fs||f===Ur;if(p||_){let g=t.get(u),m=g!==void 0?g.texture.pmremVersion:0;if(u.isRenderTargetTexture&&u.pmremVersion!==m)return n===null&&(n=new Rc(i)),g=p?n.fromEquirectangular(u,g):n.fromCubemap(u,g),g.texture.pmremVersion=u.pmremVersion,t.set(u,g),g.texture;if(g!==void 0)return g.texture;{let v=u.image;return p&&v&&v.height>0||_&&v&&c(v)?(n===null&&(n=new Rc(i)),g=p?n.fromEquirectangular(u):n.fromCubemap(u),g.texture.pmremVersion=u.pmremVersion,t.set(u,g),u.addEventListener("dispose",h),g.texture):null}}}return u}function a(u,f){return f===kl?u.mapping=Fs:f===zl&&(u.mapping=Ur),u}function c(u){let f=0,p=6;for(let _=0;_<p;_++)u[_]!==void 0&&f++;return f===p}function l(u){let f=u.target;f.removeEventListener("dispose",l);let p=e.get(f);p!==void 0&&(e.delete(f),p.dispose())}function h(u){let f=u.target;f.removeEventListener("dispose",h);let p=t.get(f);p!==void 0&&(t.delete(f),p.dispose())}function d(){e=new WeakMap,t=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:d}}function Sb(i){let e={};function t(n){if(e[n]!==void 0)return e[n];let s=i.getExtension(n);return e[n]=s,s}return{has:function(n){return t(n)!==null},init:function(){t("EXT_color_buffer_float"),t("WEBGL_clip_cull_distance"),t("OES_texture_float_linear"),t("EXT_color_buffer_half_float"),t("WEBGL_multisampled_render_to_texture"),t("WEBGL_render_shared_exponent")},get:function(n){let s=t(n);return s===null&&ws("WebGLRenderer: "+n+" extension not supported."),s}}}function wb(i,e,t,n){let s={},r=new WeakMap,o=new FinalizationRegistry(p=>delete s[p]);function a(p){c(p.target)}function c(p){p.index!==null&&e.remove(p.index);for(let g in p.attributes)e.remove(p.attributes[g]);p.removeEventListener("dispose",a),delete s[p.id],o.unregister(p);let _=r.get(p);_&&(e.remove(_),r.delete(p)),n.releaseStatesOfGeometry(p),p.isInstancedBufferGeometry===!0&&delete p._maxInstanceCount,t.memory.geometries--}function l(p,_){return s[_.id]!==void 0||(_.addEventListener("dispose",a),s[_.id]=new WeakRef(_),o.register(_,_.id,_),t.memory.geometries++),_}function h(p){let _=p.attributes;for(let g in _)e.update(_[g],i.ARRAY_BUFFER)}function d(p){let _=p.index,g=p.attributes.position,m=0;if(g===void 0)return;let v=_!==null?_.array.length:g.array.length/3-1,M=g.count>=65535?Mo:bo,b=new M(Math.ceil(v/3)*6,1),S=b.array;if(_!==null){let y=_.array;m=_.version;for(let w=0,F=0;w<v;w+=3){let I=y[w+0],D=y[w+1],$=y[w+2];S[F++]=I,S[F++]=D,S[F++]=D,S[F++]=$,S[F++]=$,S[F++]=I}}else{m=g.version;for(let y=0,w=0;y<v;y+=3){let F=y+0,I=y+1,D=y+2;S[w++]=F,S[w++]=I,S[w++]=I,S[w++]=D,S[w++]=D,S[w++]=F}}b.version=m;let T=r.get(p);T&&e.remove(T),r.set(p,b)}function u(p){let _=r.get(p);if(_){let g=p.index;g!==null&&_.version<g.version&&d(p)}else d(p);return r.get(p)}function f(){for(let p in s){let _=s[p].deref();_!==void 0&&c(_)}}return{get:l,update:h,getWireframeAttribute:u,dispose:f}}function Tb(i,e,t){let n;function s(d){n=d}let r,o;function a(d){r=d.type,o=d.bytesPerElement}function c(d,u){i.drawElements(n,u,r,d*o),t.update(u,n,1)}function l(d,u,f){f!==0&&(i.drawElementsInstanced(n,u,r,d*o,f),t.update(u,n,f))}function h(d,u,f){if(f===0)return;e.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,u,0,r,d,0,f);let _=0;for(let g=0;g<f;g++)_+=u[g];t.update(_,n,1)}this.setMode=s,this.setIndex=a,this.render=c,this.renderInstances=l,this.renderMultiDraw=h}function Eb(i){let e={geometries:0,textures:0},t={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(t.calls++,o){case i.TRIANGLES:t.triangles+=a*(r/3);break;case i.LINES:t.lines+=a*(r/2);break;case i.LINE_STRIP:t.lines+=a*(r-1);break;case i.LINE_LOOP:t.lines+=a*r;break;case i.POINTS:t.points+=a*r;break;default:Je("WebGLInfo: Unknown draw mode:",o);break}}function s(){t.calls=0,t.triangles=0,t.points=0,t.lines=0}return{memory:e,render:t,programs:null,autoReset:!0,reset:s,update:n}}function Ab(i,e,t){let n=new WeakMap,s=new bt;function r(o,a,c){let l=o.morphTargetInfluences,h=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,d=h!==void 0?h.length:0,u=n.get(a);if(u===void 0||u.count!==d){let F=function(){y.dispose(),n.delete(a),a.removeEventListener("dispose",F)};u!==void 0&&u.texture.dispose();let f=a.morphAttributes.position!==void 0,p=a.morphAttributes.normal!==void 0,_=a.morphAttributes.color!==void 0,g=a.morphAttributes.position||[],m=a.morphAttributes.normal||[],v=a.morphAttributes.color||[],M=0;f===!0&&(M=1),p===!0&&(M=2),_===!0&&(M=3);let b=a.attributes.position.count*M,S=1;b>e.maxTextureSize&&(S=Math.ceil(b/e.maxTextureSize),b=e.maxTextureSize);let T=new Float32Array(b*S*4*d),y=new yo(T,b,S,d);y.type=Fn,y.needsUpdate=!0;let w=M*4;for(let I=0;I<d;I++){let D=g[I],$=m[I],J=v[I],P=b*S*4*I;for(let k=0;k<D.count;k++){let re=k*w;f===!0&&(s.fromBufferAttribute(D,k),T[P+re+0]=s.x,T[P+re+1]=s.y,T[P+re+2]=s.z,T[P+re+3]=0),p===!0&&(s.fromBufferAttribute($,k),T[P+re+4]=s.x,T[P+re+5]=s.y,T[P+re+6]=s.z,T[P+re+7]=0),_===!0&&(s.fromBufferAttribute(J,k),T[P+re+8]=s.x,T[P+re+9]=s.y,T[P+re+10]=s.z,T[P+re+11]=J.itemSize===4?s.w:1)}}u={count:d,texture:y,size:new xe(b,S)},n.set(a,u),a.addEventListener("dispose",F)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)c.getUniforms().setValue(i,"morphTexture",o.morphTexture,t);else{let f=0;for(let _=0;_<l.length;_++)f+=l[_];let p=a.morphTargetsRelative?1:1-f;c.getUniforms().setValue(i,"morphTargetBaseInfluence",p),c.getUniforms().setValue(i,"morphTargetInfluences",l)}c.getUniforms().setValue(i,"morphTargetsTexture",u.texture,t),c.getUniforms().setValue(i,"morphTargetsTextureSize",u.size)}return{update:r}}function Rb(i,e,t,n,s){let r=new WeakMap;function o(l){let h=s.render.frame,d=l.geometry,u=e.get(l,d);if(r.get(u)!==h&&(e.update(u),r.set(u,h)),l.isInstancedMesh&&(l.hasEventListener("dispose",c)===!1&&l.addEventListener("dispose",c),r.get(l)!==h&&(t.update(l.instanceMatrix,i.ARRAY_BUFFER),l.instanceColor!==null&&t.update(l.instanceColor,i.ARRAY_BUFFER),r.set(l,h))),l.isSkinnedMesh){let f=l.skeleton;r.get(f)!==h&&(f.update(),r.set(f,h))}return u}function a(){r=new WeakMap}function c(l){let h=l.target;h.removeEventListener("dispose",c),n.releaseStatesOfObject(h),t.remove(h.instanceMatrix),h.instanceColor!==null&&t.remove(h.instanceColor)}return{update:o,dispose:a}}var Cb={[lu]:"LINEAR_TONE_MAPPING",[cu]:"REINHARD_TONE_MAPPING",[hu]:"CINEON_TONE_MAPPING",[uu]:"ACES_FILMIC_TONE_MAPPING",[fu]:"AGX_TONE_MAPPING",[pu]:"NEUTRAL_TONE_MAPPING",[du]:"CUSTOM_TONE_MAPPING"};function Ib(i,e,t,n,s,r){let o=new Un(e,t,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,c=null,l=null,h=new Pt;h.setAttribute("position",new Tt([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new Tt([0,2,0,0,2,0],2));let d=new El({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),u=new Ut(h,d),f=new Ns(-1,1,1,-1,0,1),p=null,_=null,g=!1,m,v=null,M=[],b=!1;this.setSize=function(S,T){o.setSize(S,T),a!==null&&a.setSize(S,T),c!==null&&c.setSize(S,T);for(let y=0;y<M.length;y++){let w=M[y];w.setSize&&w.setSize(S,T)}},this.setEffects=function(S){M=S,b=M.length>0&&M[0].isRenderPass===!0;let T=o.width,y=o.height;M.length>0&&a===null&&(a=new Un(T,y,{type:si,depthBuffer:!1,stencilBuffer:!1}),c=new Un(T,y,{type:si,depthBuffer:!1,stencilBuffer:!1}));let w=s===!0&&M.some(F=>F.needsDepthTexture===!0);w!==(o.depthTexture!==null)&&(w===!0&&l===null&&(l=new Ii(T,y),r===!0&&(l.format=Bi,l.type=ks)),o.dispose(),o.depthTexture=w?l:null,o.resolveDepthBuffer=w,o.storeMultisampledDepthBuffer=w);for(let F=0;F<M.length;F++){let I=M[F];I.setSize&&I.setSize(T,y),w&&I.needsDepthTexture===!0&&I.setDepthTexture&&I.setDepthTexture(l)}},this.begin=function(S,T){if(g||S.toneMapping===Vn&&M.length===0)return!1;if(v=T,T!==null){let y=T.width,w=T.height;(o.width!==y||o.height!==w)&&this.setSize(y,w)}return b===!1&&S.setRenderTarget(o),m=S.toneMapping,S.toneMapping=Vn,!0},this.hasRenderPass=function(){return b},this.end=function(S,T){S.toneMapping=m,g=!0;let y=o,w=a;for(let F=0;F<M.length;F++){let I=M[F];I.enabled!==!1&&(I.render(S,w,y,T),I.needsSwap!==!1&&(y=w,w=w===a?c:a))}if(p!==S.outputColorSpace||_!==S.toneMapping){p=S.outputColorSpace,_=S.toneMapping,d.defines={},ht.getTransfer(p)===vt&&(d.defines.SRGB_TRANSFER="");let F=Cb[_];F&&(d.defines[F]=""),d.needsUpdate=!0}d.uniforms.tDiffuse.value=y.texture,S.setRenderTarget(v),S.render(u,f),v=null,g=!1},this.isCompositing=function(){return g},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),c!==null&&c.dispose(),h.dispose(),d.dispose()}}var Km=new Wt,Zm=new Ii(1,1),Jm=new Co(1),Qm=new yo,eg=new gl,tg=new Ao,Cm=[],Im=[],Pm=new Float32Array(16),Lm=new Float32Array(9),Nm=new Float32Array(4);function Hr(i,e,t){let n=i[0];if(n<=0||n>0)return i;let s=e*t,r=Cm[s];if(r===void 0&&(r=new Float32Array(s),Cm[s]=r),e!==0){n.toArray(r,0);for(let o=1,a=0;o!==e;++o)a+=t,i[o].toArray(r,a)}return r}function $t(i,e){if(i.length!==e.length)return!1;for(let t=0,n=i.length;t<n;t++)if(i[t]!==e[t])return!1;return!0}function Xt(i,e){for(let t=0,n=e.length;t<n;t++)i[t]=e[t]}function Ic(i,e){let t=Im[e];t===void 0&&(t=new Int32Array(e),Im[e]=t);for(let n=0;n!==e;++n)t[n]=i.allocateTextureUnit();return t}function Pb(i,e){let t=this.cache;t[0]!==e&&(i.uniform1f(this.addr,e),t[0]=e)}function Lb(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2f(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if($t(t,e))return;i.uniform2fv(this.addr,e),Xt(t,e)}}function Nb(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3f(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else if(e.r!==void 0)(t[0]!==e.r||t[1]!==e.g||t[2]!==e.b)&&(i.uniform3f(this.addr,e.r,e.g,e.b),t[0]=e.r,t[1]=e.g,t[2]=e.b);else{if($t(t,e))return;i.uniform3fv(this.addr,e),Xt(t,e)}}function Db(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4f(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if($t(t,e))return;i.uniform4fv(this.addr,e),Xt(t,e)}}function Ub(i,e){let t=this.cache,n=e.elements;if(n===void 0){if($t(t,e))return;i.uniformMatrix2fv(this.addr,!1,e),Xt(t,e)}else{if($t(t,n))return;Nm.set(n),i.uniformMatrix2fv(this.addr,!1,Nm),Xt(t,n)}}function Ob(i,e){let t=this.cache,n=e.elements;if(n===void 0){if($t(t,e))return;i.uniformMatrix3fv(this.addr,!1,e),Xt(t,e)}else{if($t(t,n))return;Lm.set(n),i.uniformMatrix3fv(this.addr,!1,Lm),Xt(t,n)}}function Fb(i,e){let t=this.cache,n=e.elements;if(n===void 0){if($t(t,e))return;i.uniformMatrix4fv(this.addr,!1,e),Xt(t,e)}else{if($t(t,n))return;Pm.set(n),i.uniformMatrix4fv(this.addr,!1,Pm),Xt(t,n)}}function Bb(i,e){let t=this.cache;t[0]!==e&&(i.uniform1i(this.addr,e),t[0]=e)}function kb(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2i(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if($t(t,e))return;i.uniform2iv(this.addr,e),Xt(t,e)}}function zb(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3i(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if($t(t,e))return;i.uniform3iv(this.addr,e),Xt(t,e)}}function Hb(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4i(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if($t(t,e))return;i.uniform4iv(this.addr,e),Xt(t,e)}}function Gb(i,e){let t=this.cache;t[0]!==e&&(i.uniform1ui(this.addr,e),t[0]=e)}function Vb(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2ui(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if($t(t,e))return;i.uniform2uiv(this.addr,e),Xt(t,e)}}function Wb(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3ui(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if($t(t,e))return;i.uniform3uiv(this.addr,e),Xt(t,e)}}function $b(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4ui(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if($t(t,e))return;i.uniform4uiv(this.addr,e),Xt(t,e)}}function Pc(i){return i.version===0&&(i.compareFunction=Tu,i.needsUpdate=!0),i}function Xb(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=Pc(Zm):r=Km,t.setTexture2D(e||r,s)}function qb(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),t.setTexture3D(e||eg,s)}function Yb(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=Pc(Jm):r=tg,t.setTextureCube(e||r,s)}function jb(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),t.setTexture2DArray(e||Qm,s)}function Kb(i){switch(i){case 5126:return Pb;case 35664:return Lb;case 35665:return Nb;case 35666:return Db;case 35674:return Ub;case 35675:return Ob;case 35676:return Fb;case 5124:case 35670:return Bb;case 35667:case 35671:return kb;case 35668:case 35672:return zb;case 35669:case 35673:return Hb;case 5125:return Gb;case 36294:return Vb;case 36295:return Wb;case 36296:return $b;case 35678:case 36198:case 36298:case 36306:case 35682:return Xb;case 35679:case 36299:case 36307:return qb;case 35680:case 36300:case 36308:case 36293:return Yb;case 36289:case 36303:case 36311:case 36292:return jb}}function Zb(i,e){i.uniform1fv(this.addr,e)}function Jb(i,e){let t=Hr(e,this.size,2);i.uniform2fv(this.addr,t)}function Qb(i,e){let t=Hr(e,this.size,3);i.uniform3fv(this.addr,t)}function eM(i,e){let t=Hr(e,this.size,4);i.uniform4fv(this.addr,t)}function tM(i,e){let t=Hr(e,this.size,4);i.uniformMatrix2fv(this.addr,!1,t)}function nM(i,e){let t=Hr(e,this.size,9);i.uniformMatrix3fv(this.addr,!1,t)}function iM(i,e){let t=Hr(e,this.size,16);i.uniformMatrix4fv(this.addr,!1,t)}function sM(i,e){i.uniform1iv(this.addr,e)}function rM(i,e){i.uniform2iv(this.addr,e)}function oM(i,e){i.uniform3iv(this.addr,e)}function aM(i,e){i.uniform4iv(this.addr,e)}function lM(i,e){i.uniform1uiv(this.addr,e)}function cM(i,e){i.uniform2uiv(this.addr,e)}function hM(i,e){i.uniform3uiv(this.addr,e)}function uM(i,e){i.uniform4uiv(this.addr,e)}function dM(i,e,t){let n=this.cache,s=e.length,r=Ic(t,s);$t(n,r)||(i.uniform1iv(this.addr,r),Xt(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=Pc(Zm):o=Km;for(let a=0;a!==s;++a)t.setTexture2D(e[a]||o,r[a])}function fM(i,e,t){let n=this.cache,s=e.length,r=Ic(t,s);$t(n,r)||(i.uniform1iv(this.addr,r),Xt(n,r));for(let o=0;o!==s;++o)t.setTexture3D(e[o]||eg,r[o])}function pM(i,e,t){let n=this.cache,s=e.length,r=Ic(t,s);$t(n,r)||(i.uniform1iv(this.addr,r),Xt(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=Pc(Jm):o=tg;for(let a=0;a!==s;++a)t.setTextureCube(e[a]||o,r[a])}function mM(i,e,t){let n=this.cache,s=e.length,r=Ic(t,s);$t(n,r)||(i.uniform1iv(this.addr,r),Xt(n,r));for(let o=0;o!==s;++o)t.setTexture2DArray(e[o]||Qm,r[o])}function gM(i){switch(i){case 5126:return Zb;case 35664:return Jb;case 35665:return Qb;case 35666:return eM;case 35674:return tM;case 35675:return nM;case 35676:return iM;case 5124:case 35670:return sM;case 35667:case 35671:return rM;case 35668:case 35672:return oM;case 35669:case 35673:return aM;case 5125:return lM;case 36294:return cM;case 36295:return hM;case 36296:return uM;case 35678:case 36198:case 36298:case 36306:case 35682:return dM;case 35679:case 36299:case 36307:return fM;case 35680:case 36300:case 36308:case 36293:return pM;case 36289:case 36303:case 36311:case 36292:return mM}}var Wu=class{constructor(e,t,n){this.id=e,this.addr=n,this.cache=[],this.type=t.type,this.setValue=Kb(t.type)}},$u=class{constructor(e,t,n){this.id=e,this.addr=n,this.cache=[],this.type=t.type,this.size=t.size,this.setValue=gM(t.type)}},Xu=class{constructor(e){this.id=e,this.seq=[],this.map={}}setValue(e,t,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(e,t[a.id],n)}}},Gu=/(\w+)(\])?(\[|\.)?/g;function Dm(i,e){i.seq.push(e),i.map[e.id]=e}function _M(i,e,t){let n=i.name,s=n.length;for(Gu.lastIndex=0;;){let r=Gu.exec(n),o=Gu.lastIndex,a=r[1],c=r[2]==="]",l=r[3];if(c&&(a=a|0),l===void 0||l==="["&&o+2===s){Dm(t,l===void 0?new Wu(a,i,e):new $u(a,i,e));break}else{let d=t.map[a];d===void 0&&(d=new Xu(a),Dm(t,d)),t=d}}}var zr=class{constructor(e,t){this.seq=[],this.map={};let n=e.getProgramParameter(t,e.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=e.getActiveUniform(t,o),c=e.getUniformLocation(t,a.name);_M(a,c,this)}let s=[],r=[];for(let o of this.seq)o.type===e.SAMPLER_2D_SHADOW||o.type===e.SAMPLER_CUBE_SHADOW||o.type===e.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(e,t,n,s){let r=this.map[t];r!==void 0&&r.setValue(e,n,s)}setOptional(e,t,n){let s=t[n];s!==void 0&&this.setValue(e,n,s)}static upload(e,t,n,s){for(let r=0,o=t.length;r!==o;++r){let a=t[r],c=n[a.id];c.needsUpdate!==!1&&a.setValue(e,c.value,s)}}static seqWithValue(e,t){let n=[];for(let s=0,r=e.length;s!==r;++s){let o=e[s];o.id in t&&n.push(o)}return n}};function Um(i,e,t){let n=i.createShader(e);return i.shaderSource(n,t),i.compileShader(n),n}var xM=37297,yM=0;function vM(i,e){let t=i.split(`
`),n=[],s=Math.max(e-6,0),r=Math.min(e+6,t.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===e?">":" "} ${a}: ${t[o]}`)}return n.join(`
`)}var Om=new tt;function bM(i){ht._getMatrix(Om,ht.workingColorSpace,i);let e=`mat3( ${Om.elements.map(t=>t.toFixed(4))} )`;switch(ht.getTransfer(i)){case _o:return[e,"LinearTransferOETF"];case vt:return[e,"sRGBTransferOETF"];default:return We("WebGLProgram: Unsupported color space: ",i),[e,"LinearTransferOETF"]}}function Fm(i,e,t){let n=i.getShaderParameter(e,i.COMPILE_STATUS),r=(i.getShaderInfoLog(e)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return t.toUpperCase()+`

`+r+`

`+vM(i.getShaderSource(e),a)}else return r}function MM(i,e){let t=bM(e);return[`vec4 ${i}( vec4 value ) {`,`	return ${t[1]}( vec4( ${t[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var SM={[lu]:"Linear",[cu]:"Reinhard",[hu]:"Cineon",[uu]:"ACESFilmic",[fu]:"AgX",[pu]:"Neutral",[du]:"Custom"};function wM(i,e){let t=SM[e];return t===void 0?(We("WebGLProgram: Unsupported toneMapping:",e),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+t+"ToneMapping( color ); }"}var Ac=new L;function TM(){ht.getLuminanceCoefficients(Ac);let i=Ac.x.toFixed(4),e=Ac.y.toFixed(4),t=Ac.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${e}, ${t} );`,"	return dot( weights, rgb );","}"].join(`
`)}function EM(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(la).join(`
`)}function AM(i){let e=[];for(let t in i){let n=i[t];n!==!1&&e.push("#define "+t+" "+n)}return e.join(`
`)}function RM(i,e){let t={},n=i.getProgramParameter(e,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(e,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),t[o]={type:r.type,location:i.getAttribLocation(e,o),locationSize:a}}return t}function la(i){return i!==""}function Bm(i,e){let t=e.numSpotLightShadows+e.numSpotLightMaps-e.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,e.numSunLights).replace(/NUM_DIR_LIGHTS/g,e.numDirLights).replace(/NUM_SPOT_LIGHTS/g,e.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,e.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,t).replace(/NUM_RECT_AREA_LIGHTS/g,e.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,e.numPointLights).replace(/NUM_HEMI_LIGHTS/g,e.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,e.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,e.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,e.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,e.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,e.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,e.numLightProbeGrids)}function km(i,e){return i.replace(/NUM_CLIPPING_PLANES/g,e.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,e.numClippingPlanes-e.numClipIntersection)}var CM=/^[ \t]*#include +<([\w\d./]+)>/gm;function qu(i){return i.replace(CM,IM)}function IM(i,e){let t=lt[e];if(t===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+e+">");return qu(t)}var PM=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function zm(i){return i.replace(PM,LM)}function LM(i,e,t,n){let s="";for(let r=parseInt(e);r<parseInt(t);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Hm(i){let e=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?e+=`
#define HIGH_PRECISION`:i.precision==="mediump"?e+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(e+=`
#define LOW_PRECISION`),e}var NM={[Ds]:"SHADOWMAP_TYPE_PCF",[Nr]:"SHADOWMAP_TYPE_VSM"};function DM(i){return NM[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var UM={[Ur]:"ENVMAP_MODE_REFRACTION"};function OM(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":UM[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var FM={[Qo]:"ENVMAP_BLENDING_MULTIPLY",[tm]:"ENVMAP_BLENDING_MIX",[nm]:"ENVMAP_BLENDING_ADD"};function BM(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":FM[i.combine]||"ENVMAP_BLENDING_NONE"}function kM(i,e,t,n){let s=i.getContext(),r=t.defines,o=t.vertexShader,a=t.fragmentShader,c=DM(t),l=t.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=OM(t),d=BM(t),u=EM(t),f=AM(r),p=s.createProgram(),_,g,m=t.glslVersion?"#version "+t.glslVersion+`
`:"";t.isRawShaderMaterial?(_=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f].filter(la).join(`
`),_.length>0&&(_+=`
`),g=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f].filter(la).join(`
`),g.length>0&&(g+=`
`)):(_=[Hm(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f,t.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",t.batching?"#define USE_BATCHING":"",t.batchingColor?"#define USE_BATCHING_COLOR":"",t.instancing?"#define USE_INSTANCING":"",t.instancingColor?"#define USE_INSTANCING_COLOR":"",t.instancingMorph?"#define USE_INSTANCING_MORPH":"",t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.map?"#define USE_MAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+h:"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.displacementMap?"#define USE_DISPLACEMENTMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.mapUv?"#define MAP_UV "+t.mapUv:"",t.alphaMapUv?"#define ALPHAMAP_UV "+t.alphaMapUv:"",t.lightMapUv?"#define LIGHTMAP_UV "+t.lightMapUv:"",t.aoMapUv?"#define AOMAP_UV "+t.aoMapUv:"",t.emissiveMapUv?"#define EMISSIVEMAP_UV "+t.emissiveMapUv:"",t.bumpMapUv?"#define BUMPMAP_UV "+t.bumpMapUv:"",t.normalMapUv?"#define NORMALMAP_UV "+t.normalMapUv:"",t.displacementMapUv?"#define DISPLACEMENTMAP_UV "+t.displacementMapUv:"",t.metalnessMapUv?"#define METALNESSMAP_UV "+t.metalnessMapUv:"",t.roughnessMapUv?"#define ROUGHNESSMAP_UV "+t.roughnessMapUv:"",t.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+t.anisotropyMapUv:"",t.clearcoatMapUv?"#define CLEARCOATMAP_UV "+t.clearcoatMapUv:"",t.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+t.clearcoatNormalMapUv:"",t.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+t.clearcoatRoughnessMapUv:"",t.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+t.diffuseRoughnessMapUv:"",t.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+t.iridescenceMapUv:"",t.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+t.iridescenceThicknessMapUv:"",t.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+t.sheenColorMapUv:"",t.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+t.sheenRoughnessMapUv:"",t.specularMapUv?"#define SPECULARMAP_UV "+t.specularMapUv:"",t.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+t.specularColorMapUv:"",t.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+t.specularIntensityMapUv:"",t.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+t.transmissionMapUv:"",t.thicknessMapUv?"#define THICKNESSMAP_UV "+t.thicknessMapUv:"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexNormals?"#define HAS_NORMAL":"",t.vertexColors?"#define USE_COLOR":"",t.vertexAlphas?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.flatShading?"#define FLAT_SHADED":"",t.skinning?"#define USE_SKINNING":"",t.morphTargets?"#define USE_MORPHTARGETS":"",t.morphNormals&&t.flatShading===!1?"#define USE_MORPHNORMALS":"",t.morphColors?"#define USE_MORPHCOLORS":"",t.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+t.morphTextureStride:"",t.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+t.morphTargetsCount:"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+c:"",t.sizeAttenuation?"#define USE_SIZEATTENUATION":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(la).join(`
`),g=[Hm(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f,t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",t.map?"#define USE_MAP":"",t.matcap?"#define USE_MATCAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+l:"",t.envMap?"#define "+h:"",t.envMap?"#define "+d:"",t.envMapPMREM?"#define ENVMAP_MAX_LOD "+t.envMapMaxLod+".0":"",t.envMapPMREM?"#define ENVMAP_SIZE "+t.envMapSize+".0":"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoat?"#define USE_CLEARCOAT":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.dispersion?"#define USE_DISPERSION":"",t.retroreflection?"#define USE_RETROREFLECTION":"",t.iridescence?"#define USE_IRIDESCENCE":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaTest?"#define USE_ALPHATEST":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.sheen?"#define USE_SHEEN":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexColors||t.instancingColor?"#define USE_COLOR":"",t.vertexAlphas||t.batchingColor?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.gradientMap?"#define USE_GRADIENTMAP":"",t.flatShading?"#define FLAT_SHADED":"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+c:"",t.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",t.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",t.toneMapping!==Vn?"#define TONE_MAPPING":"",t.toneMapping!==Vn?lt.tonemapping_pars_fragment:"",t.toneMapping!==Vn?wM("toneMapping",t.toneMapping):"",t.dithering?"#define DITHERING":"",t.opaque?"#define OPAQUE":"",lt.colorspace_pars_fragment,MM("linearToOutputTexel",t.outputColorSpace),TM(),t.useDepthPacking?"#define DEPTH_PACKING "+t.depthPacking:"",`
`].filter(la).join(`
`)),o=qu(o),o=Bm(o,t),o=km(o,t),a=qu(a),a=Bm(a,t),a=km(a,t),o=zm(o),a=zm(a),t.isRawShaderMaterial!==!0&&(m=`#version 300 es
`,_=[u,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+_,g=["#define varying in",t.glslVersion===Au?"":"layout(location = 0) out highp vec4 pc_fragColor;",t.glslVersion===Au?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+g);let v=m+_+o,M=m+g+a,b=Um(s,s.VERTEX_SHADER,v),S=Um(s,s.FRAGMENT_SHADER,M);s.attachShader(p,b),s.attachShader(p,S),t.index0AttributeName!==void 0?s.bindAttribLocation(p,0,t.index0AttributeName):t.hasPositionAttribute===!0&&s.bindAttribLocation(p,0,"position"),s.linkProgram(p);function T(I){if(i.debug.checkShaderErrors){let D=s.getProgramInfoLog(p)||"",$=s.getShaderInfoLog(b)||"",J=s.getShaderInfoLog(S)||"",P=D.trim(),k=$.trim(),re=J.trim(),Y=!0,me=!0;if(s.getProgramParameter(p,s.LINK_STATUS)===!1)if(Y=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,p,b,S);else{let se=Fm(s,b,"vertex"),ce=Fm(s,S,"fragment");Je("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(p,s.VALIDATE_STATUS)+`

Material Name: `+I.name+`
Material Type: `+I.type+`

Program Info Log: `+P+`
`+se+`
`+ce)}else P!==""?We("WebGLProgram: Program Info Log:",P):(k===""||re==="")&&(me=!1);me&&(I.diagnostics={runnable:Y,programLog:P,vertexShader:{log:k,prefix:_},fragmentShader:{log:re,prefix:g}})}s.deleteShader(b),s.deleteShader(S),y=new zr(s,p),w=RM(s,p)}let y;this.getUniforms=function(){return y===void 0&&T(this),y};let w;this.getAttributes=function(){return w===void 0&&T(this),w};let F=t.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return F===!1&&(F=s.getProgramParameter(p,xM)),F},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(p),this.program=void 0},this.type=t.shaderType,this.name=t.shaderName,this.id=yM++,this.cacheKey=e,this.usedTimes=1,this.program=p,this.vertexShader=b,this.fragmentShader=S,this}var zM=0,Yu=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(e,t,n){let s=this._getShaderCacheForMaterial(e);return s.has(t)===!1&&(s.add(t),t.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(e){let t=this.materialCache.get(e);for(let n of t)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(e),this}getVertexShaderStage(e){return this._getShaderStage(e.vertexShader)}getFragmentShaderStage(e){return this._getShaderStage(e.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(e){let t=this.materialCache,n=t.get(e);return n===void 0&&(n=new Set,t.set(e,n)),n}_getShaderStage(e){let t=this.shaderCache,n=t.get(e);return n===void 0&&(n=new ju(e),t.set(e,n)),n}},ju=class{constructor(e){this.id=zM++,this.code=e,this.usedTimes=0}};function HM(i){return i===as||i===sa||i===ra}function GM(i,e,t,n,s,r){let o=new yr,a=new Yu,c=new Set,l=[],h=new Map,d=n.logarithmicDepthBuffer,u={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(y){return c.add(y),y===0?"uv":`uv${y}`}function p(y,w,F,I,D,$){let J=I.fog,P=D.geometry,k=y.isMeshStandardMaterial||y.isMeshLambertMaterial||y.isMeshPhongMaterial?I.environment:null,re=y.isMeshStandardMaterial||y.isMeshLambertMaterial&&!y.envMap||y.isMeshPhongMaterial&&!y.envMap,Y=e.get(y.envMap||k,re),me=u[y.type],se=n.precision;y.precision!==null&&(se=n.getMaxPrecision(y.precision),se!==y.precision&&We("WebGLProgram.getParameters:",y.precision,"not supported, using",se,"instead."));let ce=P.morphAttributes.position||P.morphAttributes.normal||P.morphAttributes.color,ue=ce!==void 0?ce.length:0,Pe=0;P.morphAttributes.position!==void 0&&(Pe=1),P.morphAttributes.normal!==void 0&&(Pe=2),P.morphAttributes.color!==void 0&&(Pe=3);let ne,H,le,we;if(me){let Ie=mi[me];ne=Ie.vertexShader,H=Ie.fragmentShader}else{ne=y.vertexShader,H=y.fragmentShader;let Ie=a.getVertexShaderStage(y),gt=a.getFragmentShaderStage(y);a.update(y,Ie,gt),le=Ie.id,we=gt.id}let Ue=i.getRenderTarget(),Se=i.state.buffers.depth.getReversed(),Oe=D.isInstancedMesh===!0,ct=D.isBatchedMesh===!0,Xe=!!y.map,B=!!y.matcap,ae=!!Y,G=ae&&Y.isPMREMTexture===!0,j=!!y.aoMap,he=!!y.lightMap,ve=!!y.bumpMap&&y.wireframe===!1,de=!!y.normalMap,Fe=!!y.displacementMap,Ce=!!y.emissiveMap,Me=!!y.metalnessMap,qe=!!y.roughnessMap,at=y.anisotropy>0,U=y.clearcoat>0,_t=y.diffuseRoughness>0,Qe=y.dispersion>0,pt=y.retroreflectivity>0,Ee=y.iridescence>0,Et=y.sheen>0,Ye=y.transmission>0,Ke=at&&!!y.anisotropyMap,R=U&&!!y.clearcoatMap,x=U&&!!y.clearcoatNormalMap,C=U&&!!y.clearcoatRoughnessMap,V=_t&&!!y.diffuseRoughnessMap,W=Ee&&!!y.iridescenceMap,ie=Ee&&!!y.iridescenceThicknessMap,fe=Et&&!!y.sheenColorMap,te=Et&&!!y.sheenRoughnessMap,X=!!y.specularMap,pe=!!y.specularColorMap,A=!!y.specularIntensityMap,Q=Ye&&!!y.transmissionMap,K=Ye&&!!y.thicknessMap,ye=!!y.gradientMap,ge=!!y.alphaMap,be=y.alphaTest>0,De=!!y.alphaHash,Ze=!!y.extensions,_e=Vn;y.toneMapped&&(Ue===null||Ue.isXRRenderTarget===!0)&&(_e=i.toneMapping);let $e=G?Y.isCompressedCubeTexture?Y.image[0].mipmaps:Y.mipmaps:null,st={shaderID:me,shaderType:y.type,shaderName:y.name,vertexShader:ne,fragmentShader:H,defines:y.defines,customVertexShaderID:le,customFragmentShaderID:we,isRawShaderMaterial:y.isRawShaderMaterial===!0,glslVersion:y.glslVersion,precision:se,batching:ct,batchingColor:ct&&D._colorsTexture!==null,instancing:Oe,instancingColor:Oe&&D.instanceColor!==null,instancingMorph:Oe&&D.morphTexture!==null,outputColorSpace:Ue===null?i.outputColorSpace:Ue.isXRRenderTarget===!0?Ue.texture.colorSpace:ht.workingColorSpace,alphaToCoverage:!!y.alphaToCoverage,map:Xe,matcap:B,envMap:ae,envMapMode:ae&&Y.mapping,envMapPMREM:G,envMapMaxLod:G?$e.length-1:null,envMapSize:G?$e[0].width:null,aoMap:j,lightMap:he,bumpMap:ve,normalMap:de,displacementMap:Fe,emissiveMap:Ce,normalMapObjectSpace:de&&y.normalMapType===om,normalMapTangentSpace:de&&y.normalMapType===zs,packedNormalMap:de&&y.normalMapType===zs&&HM(y.normalMap.format),metalnessMap:Me,roughnessMap:qe,anisotropy:at,anisotropyMap:Ke,clearcoat:U,clearcoatMap:R,clearcoatNormalMap:x,clearcoatRoughnessMap:C,diffuseRoughness:_t,diffuseRoughnessMap:V,dispersion:Qe,retroreflection:pt,iridescence:Ee,iridescenceMap:W,iridescenceThicknessMap:ie,sheen:Et,sheenColorMap:fe,sheenRoughnessMap:te,specularMap:X,specularColorMap:pe,specularIntensityMap:A,transmission:Ye,transmissionMap:Q,thicknessMap:K,gradientMap:ye,opaque:y.transparent===!1&&y.blending===Dr&&y.alphaToCoverage===!1,alphaMap:ge,alphaTest:be,alphaHash:De,combine:y.combine,mapUv:Xe&&f(y.map.channel),aoMapUv:j&&f(y.aoMap.channel),lightMapUv:he&&f(y.lightMap.channel),bumpMapUv:ve&&f(y.bumpMap.channel),normalMapUv:de&&f(y.normalMap.channel),displacementMapUv:Fe&&f(y.displacementMap.channel),emissiveMapUv:Ce&&f(y.emissiveMap.channel),metalnessMapUv:Me&&f(y.metalnessMap.channel),roughnessMapUv:qe&&f(y.roughnessMap.channel),anisotropyMapUv:Ke&&f(y.anisotropyMap.channel),clearcoatMapUv:R&&f(y.clearcoatMap.channel),clearcoatNormalMapUv:x&&f(y.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:C&&f(y.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:V&&f(y.diffuseRoughnessMap.channel),iridescenceMapUv:W&&f(y.iridescenceMap.channel),iridescenceThicknessMapUv:ie&&f(y.iridescenceThicknessMap.channel),sheenColorMapUv:fe&&f(y.sheenColorMap.channel),sheenRoughnessMapUv:te&&f(y.sheenRoughnessMap.channel),specularMapUv:X&&f(y.specularMap.channel),specularColorMapUv:pe&&f(y.specularColorMap.channel),specularIntensityMapUv:A&&f(y.specularIntensityMap.channel),transmissionMapUv:Q&&f(y.transmissionMap.channel),thicknessMapUv:K&&f(y.thicknessMap.channel),alphaMapUv:ge&&f(y.alphaMap.channel),vertexTangents:!!P.attributes.tangent&&(de||at),vertexNormals:!!P.attributes.normal,vertexColors:y.vertexColors,vertexAlphas:y.vertexColors===!0&&!!P.attributes.color&&P.attributes.color.itemSize===4,pointsUvs:D.isPoints===!0&&!!P.attributes.uv&&(Xe||ge),fog:!!J,useFog:y.fog===!0,fogExp2:!!J&&J.isFogExp2,flatShading:y.wireframe===!1&&(y.flatShading===!0||P.attributes.normal===void 0&&de===!1&&(y.isMeshLambertMaterial||y.isMeshPhongMaterial||y.isMeshStandardMaterial||y.isMeshPhysicalMaterial)),sizeAttenuation:y.sizeAttenuation===!0,logarithmicDepthBuffer:d,reversedDepthBuffer:Se,skinning:D.isSkinnedMesh===!0,hasPositionAttribute:P.attributes.position!==void 0,morphTargets:P.morphAttributes.position!==void 0,morphNormals:P.morphAttributes.normal!==void 0,morphColors:P.morphAttributes.color!==void 0,morphTargetsCount:ue,morphTextureStride:Pe,numSunLights:w.sun.length,numDirLights:w.directional.length,numPointLights:w.point.length,numSpotLights:w.spot.length,numSpotLightMaps:w.spotLightMap.length,numRectAreaLights:w.rectArea.length,numHemiLights:w.hemi.length,numSunLightShadows:w.sunShadowMap.length,numDirLightShadows:w.directionalShadowMap.length,numPointLightShadows:w.pointShadowMap.length,numSpotLightShadows:w.spotShadowMap.length,numSpotLightShadowsWithMaps:w.numSpotLightShadowsWithMaps,numLightProbes:w.numLightProbes,numLightProbeGrids:$.filter(Ie=>Ie.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:y.dithering,shadowMapEnabled:i.shadowMap.enabled&&F.length>0,shadowMapType:i.shadowMap.type,toneMapping:_e,decodeVideoTexture:Xe&&y.map.isVideoTexture===!0&&ht.getTransfer(y.map.colorSpace)===vt,decodeVideoTextureEmissive:Ce&&y.emissiveMap.isVideoTexture===!0&&ht.getTransfer(y.emissiveMap.colorSpace)===vt,premultipliedAlpha:y.premultipliedAlpha,doubleSided:y.side===nn,flipSided:y.side===yn,useDepthPacking:y.depthPacking>=0,depthPacking:y.depthPacking||0,index0AttributeName:y.index0AttributeName,extensionClipCullDistance:Ze&&y.extensions.clipCullDistance===!0&&t.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Ze&&y.extensions.multiDraw===!0||ct)&&t.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:t.has("KHR_parallel_shader_compile"),customProgramCacheKey:y.customProgramCacheKey()};return st.vertexUv1s=c.has(1),st.vertexUv2s=c.has(2),st.vertexUv3s=c.has(3),c.clear(),st}function _(y){let w=[];if(y.shaderID?w.push(y.shaderID):(w.push(y.customVertexShaderID),w.push(y.customFragmentShaderID)),y.defines!==void 0)for(let F in y.defines)w.push(F),w.push(y.defines[F]);return y.isRawShaderMaterial===!1&&(g(w,y),m(w,y),w.push(i.outputColorSpace)),w.push(y.customProgramCacheKey),w.join()}function g(y,w){y.push(w.precision),y.push(w.outputColorSpace),y.push(w.envMapMode),y.push(w.envMapPMREM),y.push(w.envMapMaxLod),y.push(w.envMapSize),y.push(w.mapUv),y.push(w.alphaMapUv),y.push(w.lightMapUv),y.push(w.aoMapUv),y.push(w.bumpMapUv),y.push(w.normalMapUv),y.push(w.displacementMapUv),y.push(w.emissiveMapUv),y.push(w.metalnessMapUv),y.push(w.roughnessMapUv),y.push(w.anisotropyMapUv),y.push(w.clearcoatMapUv),y.push(w.clearcoatNormalMapUv),y.push(w.clearcoatRoughnessMapUv),y.push(w.diffuseRoughnessMapUv),y.push(w.iridescenceMapUv),y.push(w.iridescenceThicknessMapUv),y.push(w.sheenColorMapUv),y.push(w.sheenRoughnessMapUv),y.push(w.specularMapUv),y.push(w.specularColorMapUv),y.push(w.specularIntensityMapUv),y.push(w.transmissionMapUv),y.push(w.thicknessMapUv),y.push(w.combine),y.push(w.fogExp2),y.push(w.sizeAttenuation),y.push(w.morphTargetsCount),y.push(w.numSunLights),y.push(w.numDirLights),y.push(w.numPointLights),y.push(w.numSpotLights),y.push(w.numSpotLightMaps),y.push(w.numHemiLights),y.push(w.numRectAreaLights),y.push(w.numSunLightShadows),y.push(w.numDirLightShadows),y.push(w.numPointLightShadows),y.push(w.numSpotLightShadows),y.push(w.numSpotLightShadowsWithMaps),y.push(w.numLightProbes),y.push(w.numLightProbeGrids),y.push(w.shadowMapType),y.push(w.toneMapping),y.push(w.numClippingPlanes),y.push(w.numClipIntersection),y.push(w.depthPacking)}function m(y,w){o.disableAll(),w.instancing&&o.enable(0),w.instancingColor&&o.enable(1),w.instancingMorph&&o.enable(2),w.matcap&&o.enable(3),w.envMap&&o.enable(4),w.normalMapObjectSpace&&o.enable(5),w.normalMapTangentSpace&&o.enable(6),w.clearcoat&&o.enable(7),w.iridescence&&o.enable(8),w.alphaTest&&o.enable(9),w.vertexColors&&o.enable(10),w.vertexAlphas&&o.enable(11),w.vertexUv1s&&o.enable(12),w.vertexUv2s&&o.enable(13),w.vertexUv3s&&o.enable(14),w.vertexTangents&&o.enable(15),w.anisotropy&&o.enable(16),w.alphaHash&&o.enable(17),w.batching&&o.enable(18),w.dispersion&&o.enable(19),w.retroreflection&&o.enable(24),w.diffuseRoughness&&o.enable(25),w.batchingColor&&o.enable(20),w.gradientMap&&o.enable(21),w.packedNormalMap&&o.enable(22),w.vertexNormals&&o.enable(23),y.push(o.mask),o.disableAll(),w.fog&&o.enable(0),w.useFog&&o.enable(1),w.flatShading&&o.enable(2),w.logarithmicDepthBuffer&&o.enable(3),w.reversedDepthBuffer&&o.enable(4),w.skinning&&o.enable(5),w.morphTargets&&o.enable(6),w.morphNormals&&o.enable(7),w.morphColors&&o.enable(8),w.premultipliedAlpha&&o.enable(9),w.shadowMapEnabled&&o.enable(10),w.doubleSided&&o.enable(11),w.flipSided&&o.enable(12),w.useDepthPacking&&o.enable(13),w.dithering&&o.enable(14),w.transmission&&o.enable(15),w.sheen&&o.enable(16),w.opaque&&o.enable(17),w.pointsUvs&&o.enable(18),w.decodeVideoTexture&&o.enable(19),w.decodeVideoTextureEmissive&&o.enable(20),w.alphaToCoverage&&o.enable(21),w.numLightProbeGrids>0&&o.enable(22),w.hasPositionAttribute&&o.enable(23),y.push(o.mask)}function v(y){let w=u[y.type],F;if(w){let I=mi[w];F=Mm.clone(I.uniforms)}else F=y.uniforms;return F}function M(y,w){let F=h.get(w);return F!==void 0?++F.usedTimes:(F=new kM(i,w,y,s),l.push(F),h.set(w,F)),F}function b(y){if(--y.usedTimes===0){let w=l.indexOf(y);l[w]=l[l.length-1],l.pop(),h.delete(y.cacheKey),y.destroy()}}function S(y){a.remove(y)}function T(){a.dispose()}return{getParameters:p,getProgramCacheKey:_,getUniforms:v,acquireProgram:M,releaseProgram:b,releaseShaderCache:S,programs:l,dispose:T}}function VM(){let i=new WeakMap;function e(o){return i.has(o)}function t(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,c){i.get(o)[a]=c}function r(){i=new WeakMap}return{has:e,get:t,remove:n,update:s,dispose:r}}function WM(i,e){return i.groupOrder!==e.groupOrder?i.groupOrder-e.groupOrder:i.renderOrder!==e.renderOrder?i.renderOrder-e.renderOrder:i.material.id!==e.material.id?i.material.id-e.material.id:i.materialVariant!==e.materialVariant?i.materialVariant-e.materialVariant:i.z!==e.z?i.z-e.z:i.id-e.id}function Gm(i,e){return i.groupOrder!==e.groupOrder?i.groupOrder-e.groupOrder:i.renderOrder!==e.renderOrder?i.renderOrder-e.renderOrder:i.z!==e.z?e.z-i.z:i.id-e.id}function Vm(){let i=[],e=0,t=[],n=[],s=[];function r(){e=0,t.length=0,n.length=0,s.length=0}function o(u){let f=0;return u.isInstancedMesh&&(f+=2),u.isSkinnedMesh&&(f+=1),f}function a(u,f,p,_,g,m){let v=i[e];return v===void 0?(v={id:u.id,object:u,geometry:f,material:p,materialVariant:o(u),groupOrder:_,renderOrder:u.renderOrder,z:g,group:m},i[e]=v):(v.id=u.id,v.object=u,v.geometry=f,v.material=p,v.materialVariant=o(u),v.groupOrder=_,v.renderOrder=u.renderOrder,v.z=g,v.group=m),e++,v}function c(u,f,p,_,g,m,v){v.reversedDepth===!0&&(g=-g);let M=a(u,f,p,_,g,m);p.transmission>0?n.push(M):p.transparent===!0?s.push(M):t.push(M)}function l(u,f,p,_,g,m){let v=a(u,f,p,_,g,m);p.transmission>0?n.unshift(v):p.transparent===!0?s.unshift(v):t.unshift(v)}function h(u,f){t.length>1&&t.sort(u||WM),n.length>1&&n.sort(f||Gm),s.length>1&&s.sort(f||Gm)}function d(){for(let u=e,f=i.length;u<f;u++){let p=i[u];if(p.id===null)break;p.id=null,p.object=null,p.geometry=null,p.material=null,p.group=null}}return{opaque:t,transmissive:n,transparent:s,init:r,push:c,unshift:l,finish:d,sort:h}}function $M(){let i=new WeakMap;function e(n,s){let r=i.get(n),o;return r===void 0?(o=new Vm,i.set(n,[o])):s>=r.length?(o=new Vm,r.push(o)):o=r[s],o}function t(){i=new WeakMap}return{get:e,dispose:t}}function XM(){let i={};return{get:function(e){if(i[e.id]!==void 0)return i[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={direction:new L,color:new Ge};break;case"SpotLight":t={position:new L,direction:new L,color:new Ge,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":t={position:new L,color:new Ge,distance:0,decay:0};break;case"HemisphereLight":t={direction:new L,skyColor:new Ge,groundColor:new Ge};break;case"RectAreaLight":t={color:new Ge,position:new L,halfWidth:new L,halfHeight:new L};break}return i[e.id]=t,t}}}function qM(){let i={};return{get:function(e){if(i[e.id]!==void 0)return i[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new xe};break;case"SpotLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new xe};break;case"PointLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new xe,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[e.id]=t,t}}}var YM=0;function jM(i,e){return(e.castShadow?2:0)-(i.castShadow?2:0)+(e.map?1:0)-(i.map?1:0)}function KM(i){let e=new XM,t=qM(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let l=0;l<9;l++)n.probe.push(new L);let s=new L,r=new je,o=new je;function a(l){let h=0,d=0,u=0;for(let $=0;$<9;$++)n.probe[$].set(0,0,0);let f=0,p=0,_=0,g=0,m=0,v=0,M=0,b=0,S=0,T=0,y=0,w=0,F=0,I=0;l.sort(jM);for(let $=0,J=l.length;$<J;$++){let P=l[$],k=P.color,re=P.intensity,Y=P.distance,me=null;if(P.shadow&&P.shadow.map&&(P.shadow.map.texture.format===as?me=P.shadow.map.texture:me=P.shadow.map.depthTexture||P.shadow.map.texture),P.isAmbientLight)h+=k.r*re,d+=k.g*re,u+=k.b*re;else if(P.isLightProbe){for(let se=0;se<9;se++)n.probe[se].addScaledVector(P.sh.coefficients[se],re);I++}else if(P.isSunLight){let se=e.get(P);if(se.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let ce=P.shadow,ue=t.get(P);ue.shadowIntensity=ce.intensity,ue.shadowBias=ce.bias,ue.shadowNormalBias=ce.normalBias,ue.shadowRadius=ce.radius,ue.shadowMapSize.copy(ce.mapSize).multiply(ce.getFrameExtents()),n.sunShadow[p]=ue,n.sunShadowMap[p]=me;let Pe=ce.getViewportCount();for(let ne=0;ne<Pe;ne++)n.sunShadowMatrix[_+ne]=ce.getMatrix(ne),n.sunShadowCascade[_+ne]=ce._cascadeData[ne];_+=Pe,p++}n.sun[f]=se,f++}else if(P.isDirectionalLight){let se=e.get(P);if(se.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let ce=P.shadow,ue=t.get(P);ue.shadowIntensity=ce.intensity,ue.shadowBias=ce.bias,ue.shadowNormalBias=ce.normalBias,ue.shadowRadius=ce.radius,ue.shadowMapSize=ce.mapSize,n.directionalShadow[g]=ue,n.directionalShadowMap[g]=me,n.directionalShadowMatrix[g]=P.shadow.matrix,S++}n.directional[g]=se,g++}else if(P.isSpotLight){let se=e.get(P);se.position.setFromMatrixPosition(P.matrixWorld),se.color.copy(k).multiplyScalar(re),se.distance=Y,se.coneCos=Math.cos(P.angle),se.penumbraCos=Math.cos(P.angle*(1-P.penumbra)),se.decay=P.decay,n.spot[v]=se;let ce=P.shadow;if(P.map&&(n.spotLightMap[w]=P.map,w++,ce.updateMatrices(P),P.castShadow&&F++),n.spotLightMatrix[v]=ce.matrix,P.castShadow){let ue=t.get(P);ue.shadowIntensity=ce.intensity,ue.shadowBias=ce.bias,ue.shadowNormalBias=ce.normalBias,ue.shadowRadius=ce.radius,ue.shadowMapSize=ce.mapSize,n.spotShadow[v]=ue,n.spotShadowMap[v]=me,y++}v++}else if(P.isRectAreaLight){let se=e.get(P);se.color.copy(k).multiplyScalar(re),se.halfWidth.set(P.width*.5,0,0),se.halfHeight.set(0,P.height*.5,0),n.rectArea[M]=se,M++}else if(P.isPointLight){let se=e.get(P);if(se.color.copy(P.color).multiplyScalar(P.intensity),se.distance=P.distance,se.decay=P.decay,P.castShadow){let ce=P.shadow,ue=t.get(P);ue.shadowIntensity=ce.intensity,ue.shadowBias=ce.bias,ue.shadowNormalBias=ce.normalBias,ue.shadowRadius=ce.radius,ue.shadowMapSize=ce.mapSize,ue.shadowCameraNear=ce.camera.near,ue.shadowCameraFar=ce.camera.far,n.pointShadow[m]=ue,n.pointShadowMap[m]=me,n.pointShadowMatrix[m]=P.shadow.matrix,T++}n.point[m]=se,m++}else if(P.isHemisphereLight){let se=e.get(P);se.skyColor.copy(P.color).multiplyScalar(re),se.groundColor.copy(P.groundColor).multiplyScalar(re),n.hemi[b]=se,b++}}M>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Le.LTC_FLOAT_1,n.rectAreaLTC2=Le.LTC_FLOAT_2):(n.rectAreaLTC1=Le.LTC_HALF_1,n.rectAreaLTC2=Le.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=d,n.ambient[2]=u;let D=n.hash;(D.sunLength!==f||D.directionalLength!==g||D.pointLength!==m||D.spotLength!==v||D.rectAreaLength!==M||D.hemiLength!==b||D.numSunShadows!==p||D.numDirectionalShadows!==S||D.numPointShadows!==T||D.numSpotShadows!==y||D.numSpotMaps!==w||D.numLightProbes!==I)&&(n.sun.length=f,n.directional.length=g,n.spot.length=v,n.rectArea.length=M,n.point.length=m,n.hemi.length=b,n.sunShadow.length=p,n.sunShadowMap.length=p,n.sunShadowMatrix.length=_,n.sunShadowCascade.length=_,n.directionalShadow.length=S,n.directionalShadowMap.length=S,n.directionalShadowMatrix.length=S,n.pointShadow.length=T,n.pointShadowMap.length=T,n.pointShadowMatrix.length=T,n.spotShadow.length=y,n.spotShadowMap.length=y,n.spotLightMatrix.length=y+w-F,n.spotLightMap.length=w,n.numSpotLightShadowsWithMaps=F,n.numLightProbes=I,D.sunLength=f,D.directionalLength=g,D.pointLength=m,D.spotLength=v,D.rectAreaLength=M,D.hemiLength=b,D.numSunShadows=p,D.numDirectionalShadows=S,D.numPointShadows=T,D.numSpotShadows=y,D.numSpotMaps=w,D.numLightProbes=I,n.version=YM++)}function c(l,h){let d=0,u=0,f=0,p=0,_=0,g=0,m=h.matrixWorldInverse;for(let v=0,M=l.length;v<M;v++){let b=l[v];if(b.isSunLight){let S=n.sun[d];S.direction.setFromMatrixPosition(b.matrixWorld),S.direction.transformDirection(m),d++}else if(b.isDirectionalLight){let S=n.directional[u];S.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),S.direction.sub(s),S.direction.transformDirection(m),u++}else if(b.isSpotLight){let S=n.spot[p];S.position.setFromMatrixPosition(b.matrixWorld),S.position.applyMatrix4(m),S.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),S.direction.sub(s),S.direction.transformDirection(m),p++}else if(b.isRectAreaLight){let S=n.rectArea[_];S.position.setFromMatrixPosition(b.matrixWorld),S.position.applyMatrix4(m),o.identity(),r.copy(b.matrixWorld),r.premultiply(m),o.extractRotation(r),S.halfWidth.set(b.width*.5,0,0),S.halfHeight.set(0,b.height*.5,0),S.halfWidth.applyMatrix4(o),S.halfHeight.applyMatrix4(o),_++}else if(b.isPointLight){let S=n.point[f];S.position.setFromMatrixPosition(b.matrixWorld),S.position.applyMatrix4(m),f++}else if(b.isHemisphereLight){let S=n.hemi[g];S.direction.setFromMatrixPosition(b.matrixWorld),S.direction.transformDirection(m),g++}}}return{setup:a,setupView:c,state:n}}function Wm(i){let e=new KM(i),t=[],n=[],s=[];function r(d){h.camera=d,t.length=0,n.length=0,s.length=0}function o(d){d.isLightProbeGrid?s.push(d):t.push(d)}function a(d){n.push(d)}function c(){e.setup(t),s.sort((d,u)=>d.priority-u.priority||d.id-u.id)}function l(d){e.setupView(t,d)}let h={lightsArray:t,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:e,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:c,setupLightsView:l,pushLight:o,pushShadow:a}}function ZM(i){let e=new WeakMap;function t(s,r=0){let o=e.get(s),a;return o===void 0?(a=new Wm(i),e.set(s,[a])):r>=o.length?(a=new Wm(i),o.push(a)):a=o[r],a}function n(){e=new WeakMap}return{get:t,dispose:n}}var JM=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,QM=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,eS=[new L(1,0,0),new L(-1,0,0),new L(0,1,0),new L(0,-1,0),new L(0,0,1),new L(0,0,-1)],tS=[new L(0,-1,0),new L(0,-1,0),new L(0,0,1),new L(0,0,-1),new L(0,-1,0),new L(0,-1,0)],$m=new je,aa=new L,Vu=new L;function nS(i,e,t){let n=new Qi,s=new xe,r=new xe,o=new bt,a=new Al,c=new Rl,l={},h=t.maxTextureSize,d={[An]:yn,[yn]:An,[nn]:nn},u=new ui({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new xe},radius:{value:4}},vertexShader:JM,fragmentShader:QM}),f=u.clone();f.defines.HORIZONTAL_PASS=1;let p=new Pt;p.setAttribute("position",new Nt(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let _=new Ut(p,u),g=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=Ds;let m=this.type;this.render=function(T,y,w){if(g.enabled===!1||g.autoUpdate===!1&&g.needsUpdate===!1||T.length===0)return;this.type===Op&&(We("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=Ds);let F=i.getRenderTarget(),I=i.getActiveCubeFace(),D=i.getActiveMipmapLevel(),$=i.state;$.setBlending(Us),$.buffers.depth.getReversed()===!0?$.buffers.color.setClear(0,0,0,0):$.buffers.color.setClear(1,1,1,1),$.buffers.depth.setTest(!0),$.setScissorTest(!1);let J=m!==this.type;J&&y.traverse(function(P){P.material&&(Array.isArray(P.material)?P.material.forEach(k=>k.needsUpdate=!0):P.material.needsUpdate=!0)});for(let P=0,k=T.length;P<k;P++){let re=T[P],Y=re.shadow;if(Y===void 0){We("WebGLShadowMap:",re,"has no shadow.");continue}if(Y.autoUpdate===!1&&Y.needsUpdate===!1)continue;s.copy(Y.mapSize);let me=Y.getFrameExtents();s.multiply(me),r.copy(Y.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/me.x),s.x=r.x*me.x,Y.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/me.y),s.y=r.y*me.y,Y.mapSize.y=r.y));let se=i.state.buffers.depth.getReversed();if(Y.camera._reversedDepth=se,Y.map===null||J===!0){if(Y.map!==null&&(Y.map.depthTexture!==null&&(Y.map.depthTexture.dispose(),Y.map.depthTexture=null),Y.map.dispose()),this.type===Nr){if(re.isPointLight){We("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}Y.map=new Un(s.x,s.y,{format:as,type:si,minFilter:Vt,magFilter:Vt,generateMipmaps:!1}),Y.map.texture.name=re.name+".shadowMap",Y.map.depthTexture=new Ii(s.x,s.y,Fn),Y.map.depthTexture.name=re.name+".shadowMapDepth",Y.map.depthTexture.format=Ri,Y.map.depthTexture.compareFunction=null,Y.map.depthTexture.minFilter=Dt,Y.map.depthTexture.magFilter=Dt}else re.isPointLight?(Y.map=new ca(s.x),Y.map.depthTexture=new Co(s.x,ii)):(Y.map=new Un(s.x,s.y),Y.map.depthTexture=new Ii(s.x,s.y,ii)),Y.map.depthTexture.name=re.name+".shadowMap",Y.map.depthTexture.format=Ri,this.type===Ds?(Y.map.depthTexture.compareFunction=se?wu:Su,Y.map.depthTexture.minFilter=Vt,Y.map.depthTexture.magFilter=Vt):(Y.map.depthTexture.compareFunction=null,Y.map.depthTexture.minFilter=Dt,Y.map.depthTexture.magFilter=Dt);Y.camera.updateProjectionMatrix()}Y.map.isWebGLCubeRenderTarget!==!0&&(Y.map.width!==s.x||Y.map.height!==s.y)&&Y.map.setSize(s.x,s.y);let ce=Y.map.isWebGLCubeRenderTarget?6:Y.getViewportCount();re.isPointLight!==!0&&Y.updateMatrices(re,w);let ue=(Y.camera.layers.mask&4294967294)!==0?Y.camera.layers:w.layers;for(let Pe=0;Pe<ce;Pe++){let ne=Y.getCamera(Pe);if(re.isPointLight){let H=Y.camera,le=Y.matrix,we=re.distance||H.far;we!==H.far&&(H.far=we,H.updateProjectionMatrix()),aa.setFromMatrixPosition(re.matrixWorld),H.position.copy(aa),Vu.copy(H.position),Vu.add(eS[Pe]),H.up.copy(tS[Pe]),H.lookAt(Vu),H.updateMatrixWorld(),le.makeTranslation(-aa.x,-aa.y,-aa.z),$m.multiplyMatrices(H.projectionMatrix,H.matrixWorldInverse),Y._frustum.setFromProjectionMatrix($m,H.coordinateSystem,H.reversedDepth)}if(Y.map.isWebGLCubeRenderTarget)i.setRenderTarget(Y.map,Pe),i.clear();else{Pe===0&&(i.setRenderTarget(Y.map),i.clear());let H=Y.getViewport(Pe);o.set(r.x*H.x,r.y*H.y,r.x*H.z,r.y*H.w),$.viewport(o)}n=Y.getFrustum(Pe),b(y,w,ne,re,ue,this.type)}Y.isPointLightShadow!==!0&&this.type===Nr&&v(Y,w),Y.needsUpdate=!1}m=this.type,g.needsUpdate=!1,i.setRenderTarget(F,I,D)};function v(T,y){let w=e.update(_);u.defines.VSM_SAMPLES!==T.blurSamples&&(u.defines.VSM_SAMPLES=T.blurSamples,f.defines.VSM_SAMPLES=T.blurSamples,u.needsUpdate=!0,f.needsUpdate=!0),T.mapPass===null?T.mapPass=new Un(s.x,s.y,{format:as,type:si}):(T.mapPass.width!==T.map.width||T.mapPass.height!==T.map.height)&&T.mapPass.setSize(T.map.width,T.map.height),u.uniforms.shadow_pass.value=T.map.depthTexture,u.uniforms.resolution.value.set(T.map.width,T.map.height),u.uniforms.radius.value=T.radius,i.setRenderTarget(T.mapPass),i.clear(),i.renderBufferDirect(y,null,w,u,_,null),f.uniforms.shadow_pass.value=T.mapPass.texture,f.uniforms.resolution.value.set(T.map.width,T.map.height),f.uniforms.radius.value=T.radius,i.setRenderTarget(T.map),i.clear(),i.renderBufferDirect(y,null,w,f,_,null)}function M(T,y,w,F){let I=null,D=w.isPointLight===!0?T.customDistanceMaterial:T.customDepthMaterial;if(D!==void 0)I=D;else if(I=w.isPointLight===!0?c:a,i.localClippingEnabled&&y.clipShadows===!0&&Array.isArray(y.clippingPlanes)&&y.clippingPlanes.length!==0||y.displacementMap&&y.displacementScale!==0||y.alphaMap&&y.alphaTest>0||y.map&&y.alphaTest>0||y.alphaToCoverage===!0){let $=I.uuid,J=y.uuid,P=l[$];P===void 0&&(P={},l[$]=P);let k=P[J];k===void 0&&(k=I.clone(),P[J]=k,y.addEventListener("dispose",S)),I=k}if(I.visible=y.visible,I.wireframe=y.wireframe,F===Nr?I.side=y.shadowSide!==null?y.shadowSide:y.side:I.side=y.shadowSide!==null?y.shadowSide:d[y.side],I.alphaMap=y.alphaMap,I.alphaTest=y.alphaToCoverage===!0?.5:y.alphaTest,I.map=y.map,I.clipShadows=y.clipShadows,I.clippingPlanes=y.clippingPlanes,I.clipIntersection=y.clipIntersection,I.displacementMap=y.displacementMap,I.displacementScale=y.displacementScale,I.displacementBias=y.displacementBias,I.wireframeLinewidth=y.wireframeLinewidth,I.linewidth=y.linewidth,w.isPointLight===!0&&I.isMeshDistanceMaterial===!0){let $=i.properties.get(I);$.light=w}return I}function b(T,y,w,F,I,D){if(T.visible===!1)return;if(T.layers.test(I)&&(T.isMesh||T.isLine||T.isPoints)&&(T.castShadow||T.receiveShadow&&D===Nr)&&(!T.frustumCulled||T.intersectsFrustum(n))){T.modelViewMatrix.multiplyMatrices(w.matrixWorldInverse,T.matrixWorld);let P=e.update(T),k=T.material;if(Array.isArray(k)){let re=P.groups;for(let Y=0,me=re.length;Y<me;Y++){let se=re[Y],ce=k[se.materialIndex];if(ce&&ce.visible){let ue=M(T,ce,F,D);T.onBeforeShadow(i,T,y,w,P,ue,se),i.renderBufferDirect(w,null,P,ue,T,se),T.onAfterShadow(i,T,y,w,P,ue,se)}}}else if(k.visible){let re=M(T,k,F,D);T.onBeforeShadow(i,T,y,w,P,re,null),i.renderBufferDirect(w,null,P,re,T,null),T.onAfterShadow(i,T,y,w,P,re,null)}}let J=T.children;for(let P=0,k=J.length;P<k;P++)b(J[P],y,w,F,I,D)}function S(T){T.target.removeEventListener("dispose",S);for(let w in l){let F=l[w],I=T.target.uuid;I in F&&(F[I].dispose(),delete F[I])}}}function iS(i,e){function t(){let A=!1,Q=new bt,K=null,ye=new bt(0,0,0,0);return{setMask:function(ge){K!==ge&&!A&&(i.colorMask(ge,ge,ge,ge),K=ge)},setLocked:function(ge){A=ge},setClear:function(ge,be,De,Ze,_e){_e===!0&&(ge*=Ze,be*=Ze,De*=Ze),Q.set(ge,be,De,Ze),ye.equals(Q)===!1&&(i.clearColor(ge,be,De,Ze),ye.copy(Q))},reset:function(){A=!1,K=null,ye.set(-1,0,0,0)}}}function n(){let A=!1,Q=!1,K=null,ye=null,ge=null;return{setReversed:function(be){if(Q!==be){let De=e.get("EXT_clip_control");be?De.clipControlEXT(De.LOWER_LEFT_EXT,De.ZERO_TO_ONE_EXT):De.clipControlEXT(De.LOWER_LEFT_EXT,De.NEGATIVE_ONE_TO_ONE_EXT),Q=be;let Ze=ge;ge=null,this.setClear(Ze)}},getReversed:function(){return Q},setTest:function(be){be?Se(i.DEPTH_TEST):Oe(i.DEPTH_TEST)},setMask:function(be){K!==be&&!A&&(i.depthMask(be),K=be)},setFunc:function(be){if(Q&&(be=gm[be]),ye!==be){switch(be){case al:i.depthFunc(i.NEVER);break;case ll:i.depthFunc(i.ALWAYS);break;case cl:i.depthFunc(i.LESS);break;case fr:i.depthFunc(i.LEQUAL);break;case hl:i.depthFunc(i.EQUAL);break;case ul:i.depthFunc(i.GEQUAL);break;case dl:i.depthFunc(i.GREATER);break;case fl:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}ye=be}},setLocked:function(be){A=be},setClear:function(be){ge!==be&&(ge=be,Q&&(be=1-be),i.clearDepth(be))},reset:function(){A=!1,K=null,ye=null,ge=null,Q=!1}}}function s(){let A=!1,Q=null,K=null,ye=null,ge=null,be=null,De=null,Ze=null,_e=null;return{setTest:function($e){A||($e?Se(i.STENCIL_TEST):Oe(i.STENCIL_TEST))},setMask:function($e){Q!==$e&&!A&&(i.stencilMask($e),Q=$e)},setFunc:function($e,st,Ie){(K!==$e||ye!==st||ge!==Ie)&&(i.stencilFunc($e,st,Ie),K=$e,ye=st,ge=Ie)},setOp:function($e,st,Ie){(be!==$e||De!==st||Ze!==Ie)&&(i.stencilOp($e,st,Ie),be=$e,De=st,Ze=Ie)},setLocked:function($e){A=$e},setClear:function($e){_e!==$e&&(i.clearStencil($e),_e=$e)},reset:function(){A=!1,Q=null,K=null,ye=null,ge=null,be=null,De=null,Ze=null,_e=null}}}let r=new t,o=new n,a=new s,c={},l=new WeakMap,h={},d={},u={},f=new WeakMap,p=[],_=null,g=!1,m=null,v=null,M=null,b=null,S=null,T=null,y=null,w=new Ge(0,0,0),F=0,I=!1,D=null,$=null,J=null,P=null,k=null,re=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),Y=!1,me=0,se=i.getParameter(i.VERSION);se.indexOf("WebGL")!==-1?(me=parseFloat(/^WebGL (\d)/.exec(se)[1]),Y=me>=1):se.indexOf("OpenGL ES")!==-1&&(me=parseFloat(/^OpenGL ES (\d)/.exec(se)[1]),Y=me>=2);let ce=null,ue={},Pe=i.getParameter(i.SCISSOR_BOX),ne=i.getParameter(i.VIEWPORT),H=new bt().fromArray(Pe),le=new bt().fromArray(ne);function we(A,Q,K,ye){let ge=new Uint8Array(4),be=i.createTexture();i.bindTexture(A,be),i.texParameteri(A,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(A,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let De=0;De<K;De++)A===i.TEXTURE_3D||A===i.TEXTURE_2D_ARRAY?i.texImage3D(Q,0,i.RGBA,1,1,ye,0,i.RGBA,i.UNSIGNED_BYTE,ge):i.texImage2D(Q+De,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,ge);return be}let Ue={};Ue[i.TEXTURE_2D]=we(i.TEXTURE_2D,i.TEXTURE_2D,1),Ue[i.TEXTURE_CUBE_MAP]=we(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),Ue[i.TEXTURE_2D_ARRAY]=we(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),Ue[i.TEXTURE_3D]=we(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),Se(i.DEPTH_TEST),o.setFunc(fr),ve(!1),de(nu),Se(i.CULL_FACE),j(Us);function Se(A){h[A]!==!0&&(i.enable(A),h[A]=!0)}function Oe(A){h[A]!==!1&&(i.disable(A),h[A]=!1)}function ct(A,Q){return u[A]!==Q?(i.bindFramebuffer(A,Q),u[A]=Q,A===i.DRAW_FRAMEBUFFER&&(u[i.FRAMEBUFFER]=Q),A===i.FRAMEBUFFER&&(u[i.DRAW_FRAMEBUFFER]=Q),!0):!1}function Xe(A,Q){let K=p,ye=!1;if(A){K=f.get(Q),K===void 0&&(K=[],f.set(Q,K));let ge=A.textures;if(K.length!==ge.length||K[0]!==i.COLOR_ATTACHMENT0){for(let be=0,De=ge.length;be<De;be++)K[be]=i.COLOR_ATTACHMENT0+be;K.length=ge.length,ye=!0}}else K[0]!==i.BACK&&(K[0]=i.BACK,ye=!0);ye&&i.drawBuffers(K)}function B(A){return _!==A?(i.useProgram(A),_=A,!0):!1}let ae={[Os]:i.FUNC_ADD,[Bp]:i.FUNC_SUBTRACT,[kp]:i.FUNC_REVERSE_SUBTRACT};ae[zp]=i.MIN,ae[Hp]=i.MAX;let G={[Gp]:i.ZERO,[Vp]:i.ONE,[Wp]:i.SRC_COLOR,[ou]:i.SRC_ALPHA,[Kp]:i.SRC_ALPHA_SATURATE,[Yp]:i.DST_COLOR,[Xp]:i.DST_ALPHA,[$p]:i.ONE_MINUS_SRC_COLOR,[au]:i.ONE_MINUS_SRC_ALPHA,[jp]:i.ONE_MINUS_DST_COLOR,[qp]:i.ONE_MINUS_DST_ALPHA,[Zp]:i.CONSTANT_COLOR,[Jp]:i.ONE_MINUS_CONSTANT_COLOR,[Qp]:i.CONSTANT_ALPHA,[em]:i.ONE_MINUS_CONSTANT_ALPHA};function j(A,Q,K,ye,ge,be,De,Ze,_e,$e){if(A===Us){g===!0&&(Oe(i.BLEND),g=!1);return}if(g===!1&&(Se(i.BLEND),g=!0),A!==Fp){if(A!==m||$e!==I){if((v!==Os||S!==Os)&&(i.blendEquation(i.FUNC_ADD),v=Os,S=Os),$e)switch(A){case Dr:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case iu:i.blendFunc(i.ONE,i.ONE);break;case su:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case ru:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:Je("WebGLState: Invalid blending: ",A);break}else switch(A){case Dr:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case iu:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case su:Je("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case ru:Je("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:Je("WebGLState: Invalid blending: ",A);break}M=null,b=null,T=null,y=null,w.set(0,0,0),F=0,m=A,I=$e}return}ge=ge||Q,be=be||K,De=De||ye,(Q!==v||ge!==S)&&(i.blendEquationSeparate(ae[Q],ae[ge]),v=Q,S=ge),(K!==M||ye!==b||be!==T||De!==y)&&(i.blendFuncSeparate(G[K],G[ye],G[be],G[De]),M=K,b=ye,T=be,y=De),(Ze.equals(w)===!1||_e!==F)&&(i.blendColor(Ze.r,Ze.g,Ze.b,_e),w.copy(Ze),F=_e),m=A,I=!1}function he(A,Q){A.side===nn?Oe(i.CULL_FACE):Se(i.CULL_FACE);let K=A.side===yn;Q&&(K=!K),ve(K),A.blending===Dr&&A.transparent===!1?j(Us):j(A.blending,A.blendEquation,A.blendSrc,A.blendDst,A.blendEquationAlpha,A.blendSrcAlpha,A.blendDstAlpha,A.blendColor,A.blendAlpha,A.premultipliedAlpha),o.setFunc(A.depthFunc),o.setTest(A.depthTest),o.setMask(A.depthWrite),r.setMask(A.colorWrite);let ye=A.stencilWrite;a.setTest(ye),ye&&(a.setMask(A.stencilWriteMask),a.setFunc(A.stencilFunc,A.stencilRef,A.stencilFuncMask),a.setOp(A.stencilFail,A.stencilZFail,A.stencilZPass)),Ce(A.polygonOffset,A.polygonOffsetFactor,A.polygonOffsetUnits),A.alphaToCoverage===!0?Se(i.SAMPLE_ALPHA_TO_COVERAGE):Oe(i.SAMPLE_ALPHA_TO_COVERAGE)}function ve(A){D!==A&&(A?i.frontFace(i.CW):i.frontFace(i.CCW),D=A)}function de(A){A!==Dp?(Se(i.CULL_FACE),A!==$&&(A===nu?i.cullFace(i.BACK):A===Up?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):Oe(i.CULL_FACE),$=A}function Fe(A){A!==J&&(Y&&i.lineWidth(A),J=A)}function Ce(A,Q,K){A?(Se(i.POLYGON_OFFSET_FILL),(P!==Q||k!==K)&&(P=Q,k=K,o.getReversed()&&(Q=-Q,K=-K),i.polygonOffset(Q,K))):Oe(i.POLYGON_OFFSET_FILL)}function Me(A){A?Se(i.SCISSOR_TEST):Oe(i.SCISSOR_TEST)}function qe(A){A===void 0&&(A=i.TEXTURE0+re-1),ce!==A&&(i.activeTexture(A),ce=A)}function at(A,Q,K){K===void 0&&(ce===null?K=i.TEXTURE0+re-1:K=ce);let ye=ue[K];ye===void 0&&(ye={type:void 0,texture:void 0},ue[K]=ye),(ye.type!==A||ye.texture!==Q)&&(ce!==K&&(i.activeTexture(K),ce=K),i.bindTexture(A,Q||Ue[A]),ye.type=A,ye.texture=Q)}function U(){let A=ue[ce];A!==void 0&&A.type!==void 0&&(i.bindTexture(A.type,null),A.type=void 0,A.texture=void 0)}function _t(){try{i.compressedTexImage2D(...arguments)}catch(A){Je("WebGLState:",A)}}function Qe(){try{i.compressedTexImage3D(...arguments)}catch(A){Je("WebGLState:",A)}}function pt(){try{i.texSubImage2D(...arguments)}catch(A){Je("WebGLState:",A)}}function Ee(){try{i.texSubImage3D(...arguments)}catch(A){Je("WebGLState:",A)}}function Et(){try{i.compressedTexSubImage2D(...arguments)}catch(A){Je("WebGLState:",A)}}function Ye(){try{i.compressedTexSubImage3D(...arguments)}catch(A){Je("WebGLState:",A)}}function Ke(){try{i.texStorage2D(...arguments)}catch(A){Je("WebGLState:",A)}}function R(){try{i.texStorage3D(...arguments)}catch(A){Je("WebGLState:",A)}}function x(){try{i.texImage2D(...arguments)}catch(A){Je("WebGLState:",A)}}function C(){try{i.texImage3D(...arguments)}catch(A){Je("WebGLState:",A)}}function V(A){return d[A]!==void 0?d[A]:i.getParameter(A)}function W(A,Q){d[A]!==Q&&(i.pixelStorei(A,Q),d[A]=Q)}function ie(A){H.equals(A)===!1&&(i.scissor(A.x,A.y,A.z,A.w),H.copy(A))}function fe(A){le.equals(A)===!1&&(i.viewport(A.x,A.y,A.z,A.w),le.copy(A))}function te(A,Q){let K=l.get(Q);K===void 0&&(K=new WeakMap,l.set(Q,K));let ye=K.get(A);ye===void 0&&(ye=i.getUniformBlockIndex(Q,A.name),i.uniformBlockBinding(Q,ye,ye),K.set(A,ye))}function X(A,Q,K){let ge=l.get(Q).get(A);c[ge]!==K&&(i.bindBufferBase(i.UNIFORM_BUFFER,ge,K),c[ge]=K)}function pe(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},d={},ce=null,ue={},u={},c={},f=new WeakMap,p=[],_=null,g=!1,m=null,v=null,M=null,b=null,S=null,T=null,y=null,w=new Ge(0,0,0),F=0,I=!1,D=null,$=null,J=null,P=null,k=null,H.set(0,0,i.canvas.width,i.canvas.height),le.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:Se,disable:Oe,bindFramebuffer:ct,drawBuffers:Xe,useProgram:B,setBlending:j,setMaterial:he,setFlipSided:ve,setCullFace:de,setLineWidth:Fe,setPolygonOffset:Ce,setScissorTest:Me,activeTexture:qe,bindTexture:at,unbindTexture:U,compressedTexImage2D:_t,compressedTexImage3D:Qe,texImage2D:x,texImage3D:C,pixelStorei:W,getParameter:V,updateUBOMapping:te,uniformBlockBinding:X,texStorage2D:Ke,texStorage3D:R,texSubImage2D:pt,texSubImage3D:Ee,compressedTexSubImage2D:Et,compressedTexSubImage3D:Ye,scissor:ie,viewport:fe,reset:pe}}function sS(i,e,t,n,s,r,o){let a=e.has("WEBGL_multisampled_render_to_texture")?e.get("WEBGL_multisampled_render_to_texture"):null,c=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),l=new xe,h=new WeakMap,d=new Set,u,f=new WeakMap,p=new Set,_=new FinalizationRegistry(R=>p.delete(R)),g=!1;try{g=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function m(R,x){return g?new OffscreenCanvas(R,x):gr("canvas")}function v(R,x,C){let V=1,W=Ke(R);if((W.width>C||W.height>C)&&(V=C/Math.max(W.width,W.height)),V<1)if(typeof HTMLImageElement<"u"&&R instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&R instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&R instanceof ImageBitmap||typeof VideoFrame<"u"&&R instanceof VideoFrame){let ie=Math.floor(V*W.width),fe=Math.floor(V*W.height);u===void 0&&(u=m(ie,fe));let te=x?m(ie,fe):u;return te.width=ie,te.height=fe,te.getContext("2d").drawImage(R,0,0,ie,fe),We("WebGLRenderer: Texture has been resized from ("+W.width+"x"+W.height+") to ("+ie+"x"+fe+")."),te}else return"data"in R&&We("WebGLRenderer: Image in DataTexture is too big ("+W.width+"x"+W.height+")."),R;return R}function M(R){return R.generateMipmaps}function b(R){i.generateMipmap(R)}function S(R){return R.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:R.isWebGL3DRenderTarget?i.TEXTURE_3D:R.isWebGLArrayRenderTarget||R.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function T(R,x,C,V,W,ie=!1){if(R!==null){if(i[R]!==void 0)return i[R];We("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+R+"'")}let fe;V&&(fe=e.get("EXT_texture_norm16"),fe||We("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let te=x;if(x===i.RED&&(C===i.FLOAT&&(te=i.R32F),C===i.HALF_FLOAT&&(te=i.R16F),C===i.UNSIGNED_BYTE&&(te=i.R8),C===i.UNSIGNED_SHORT&&fe&&(te=fe.R16_EXT),C===i.SHORT&&fe&&(te=fe.R16_SNORM_EXT)),x===i.RED_INTEGER&&(C===i.UNSIGNED_BYTE&&(te=i.R8UI),C===i.UNSIGNED_SHORT&&(te=i.R16UI),C===i.UNSIGNED_INT&&(te=i.R32UI),C===i.BYTE&&(te=i.R8I),C===i.SHORT&&(te=i.R16I),C===i.INT&&(te=i.R32I)),x===i.RG&&(C===i.FLOAT&&(te=i.RG32F),C===i.HALF_FLOAT&&(te=i.RG16F),C===i.UNSIGNED_BYTE&&(te=i.RG8),C===i.UNSIGNED_SHORT&&fe&&(te=fe.RG16_EXT),C===i.SHORT&&fe&&(te=fe.RG16_SNORM_EXT)),x===i.RG_INTEGER&&(C===i.UNSIGNED_BYTE&&(te=i.RG8UI),C===i.UNSIGNED_SHORT&&(te=i.RG16UI),C===i.UNSIGNED_INT&&(te=i.RG32UI),C===i.BYTE&&(te=i.RG8I),C===i.SHORT&&(te=i.RG16I),C===i.INT&&(te=i.RG32I)),x===i.RGB_INTEGER&&(C===i.UNSIGNED_BYTE&&(te=i.RGB8UI),C===i.UNSIGNED_SHORT&&(te=i.RGB16UI),C===i.UNSIGNED_INT&&(te=i.RGB32UI),C===i.BYTE&&(te=i.RGB8I),C===i.SHORT&&(te=i.RGB16I),C===i.INT&&(te=i.RGB32I)),x===i.RGBA_INTEGER&&(C===i.UNSIGNED_BYTE&&(te=i.RGBA8UI),C===i.UNSIGNED_SHORT&&(te=i.RGBA16UI),C===i.UNSIGNED_INT&&(te=i.RGBA32UI),C===i.BYTE&&(te=i.RGBA8I),C===i.SHORT&&(te=i.RGBA16I),C===i.INT&&(te=i.RGBA32I)),x===i.RGB&&(C===i.UNSIGNED_SHORT&&fe&&(te=fe.RGB16_EXT),C===i.SHORT&&fe&&(te=fe.RGB16_SNORM_EXT),C===i.UNSIGNED_INT_5_9_9_9_REV&&(te=i.RGB9_E5),C===i.UNSIGNED_INT_10F_11F_11F_REV&&(te=i.R11F_G11F_B10F)),x===i.RGBA){let X=ie?_o:ht.getTransfer(W);C===i.FLOAT&&(te=i.RGBA32F),C===i.HALF_FLOAT&&(te=i.RGBA16F),C===i.UNSIGNED_BYTE&&(te=X===vt?i.SRGB8_ALPHA8:i.RGBA8),C===i.UNSIGNED_SHORT&&fe&&(te=fe.RGBA16_EXT),C===i.SHORT&&fe&&(te=fe.RGBA16_SNORM_EXT),C===i.UNSIGNED_SHORT_4_4_4_4&&(te=i.RGBA4),C===i.UNSIGNED_SHORT_5_5_5_1&&(te=i.RGB5_A1)}return(te===i.R16F||te===i.R32F||te===i.RG16F||te===i.RG32F||te===i.RGBA16F||te===i.RGBA32F)&&e.get("EXT_color_buffer_float"),te}function y(R,x){let C;return R?x===null||x===ii||x===ks?C=i.DEPTH24_STENCIL8:x===Fn?C=i.DEPTH32F_STENCIL8:x===Fr&&(C=i.DEPTH24_STENCIL8,We("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):x===null||x===ii||x===ks?C=i.DEPTH_COMPONENT24:x===Fn?C=i.DEPTH_COMPONENT32F:x===Fr&&(C=i.DEPTH_COMPONENT16),C}function w(R,x){return M(R)===!0||R.isFramebufferTexture&&R.minFilter!==Dt&&R.minFilter!==Vt?Math.log2(Math.max(x.width,x.height))+1:R.mipmaps.length>0?R.mipmaps.length:R.isCompressedTexture&&Array.isArray(R.image)?x.mipmaps.length:1}function F(R){let x=new WeakRef(R);n.get(R).__ref=x,p.add(x),_.register(R,x,x)}function I(R){let x=n.get(R).__ref;x!==void 0&&(p.delete(x),_.unregister(x))}function D(R){J(R.target)}function $(R){P(R.target)}function J(R){R.removeEventListener("dispose",D),I(R),re(R),R.isVideoTexture&&h.delete(R),R.isHTMLTexture&&d.delete(R)}function P(R){R.removeEventListener("dispose",$),I(R),me(R)}function k(){for(let R of p){let x=R.deref();x!==void 0&&(x.isRenderTarget===!0?P(x):J(x))}p.clear(),d.clear()}function re(R){let x=n.get(R);if(x.__webglInit===void 0)return;let C=R.source,V=f.get(C);if(V){let W=V[x.__cacheKey];W.usedTimes--,W.usedTimes===0&&Y(R),Object.keys(V).length===0&&f.delete(C)}n.remove(R)}function Y(R){let x=n.get(R);i.deleteTexture(x.__webglTexture);let C=R.source,V=f.get(C);delete V[x.__cacheKey],o.memory.textures--}function me(R){let x=n.get(R);x.__depthDisposeCallback&&x.__depthDisposeCallback();let C=R.depthTexture;if(C&&C.renderTarget===R&&J(C),R.isWebGLCubeRenderTarget)for(let W=0;W<6;W++){if(Array.isArray(x.__webglFramebuffer[W]))for(let ie=0;ie<x.__webglFramebuffer[W].length;ie++)i.deleteFramebuffer(x.__webglFramebuffer[W][ie]);else i.deleteFramebuffer(x.__webglFramebuffer[W]);x.__webglDepthbuffer&&i.deleteRenderbuffer(x.__webglDepthbuffer[W])}else{if(Array.isArray(x.__webglFramebuffer))for(let W=0;W<x.__webglFramebuffer.length;W++)i.deleteFramebuffer(x.__webglFramebuffer[W]);else i.deleteFramebuffer(x.__webglFramebuffer);if(x.__webglDepthbuffer&&i.deleteRenderbuffer(x.__webglDepthbuffer),x.__webglMultisampledFramebuffer&&i.deleteFramebuffer(x.__webglMultisampledFramebuffer),x.__webglColorRenderbuffer)for(let W=0;W<x.__webglColorRenderbuffer.length;W++)x.__webglColorRenderbuffer[W]&&i.deleteRenderbuffer(x.__webglColorRenderbuffer[W]);x.__webglDepthRenderbuffer&&i.deleteRenderbuffer(x.__webglDepthRenderbuffer)}let V=R.textures;for(let W=0,ie=V.length;W<ie;W++){let fe=n.get(V[W]);fe.__webglTexture&&(i.deleteTexture(fe.__webglTexture),o.memory.textures--),n.remove(V[W])}n.remove(R)}let se=0;function ce(){se=0}function ue(){return se}function Pe(R){se=R}function ne(){let R=se;return R>=s.maxTextures&&We("WebGLTextures: Trying to use "+(R+1)+" texture units while this GPU supports only "+s.maxTextures),se+=1,R}function H(R){let x=[];return x.push(R.wrapS),x.push(R.wrapT),x.push(R.wrapR||0),x.push(R.magFilter),x.push(R.minFilter),x.push(R.anisotropy),x.push(R.internalFormat),x.push(R.format),x.push(R.type),x.push(R.generateMipmaps),x.push(R.mipmapsAutoUpdate),x.push(R.premultiplyAlpha),x.push(R.flipY),x.push(R.unpackAlignment),x.push(R.colorSpace),x.join()}function le(R,x){let C=n.get(R);if(R.isVideoTexture&&Et(R),R.isRenderTargetTexture===!1&&R.isExternalTexture!==!0&&R.version>0&&C.__version!==R.version){let V=R.image;if(V===null)We("WebGLRenderer: Texture marked for update but no image data found.");else if(V.complete===!1)We("WebGLRenderer: Texture marked for update but image is incomplete");else{he(C,R,x);return}}else R.isExternalTexture&&(C.__webglTexture=R.sourceTexture?R.sourceTexture:null);t.bindTexture(i.TEXTURE_2D,C.__webglTexture,i.TEXTURE0+x)}function we(R,x){let C=n.get(R);if(R.isRenderTargetTexture===!1&&R.version>0&&C.__version!==R.version){he(C,R,x);return}else R.isExternalTexture&&(C.__webglTexture=R.sourceTexture?R.sourceTexture:null);t.bindTexture(i.TEXTURE_2D_ARRAY,C.__webglTexture,i.TEXTURE0+x)}function Ue(R,x){let C=n.get(R);if(R.isRenderTargetTexture===!1&&R.version>0&&C.__version!==R.version){he(C,R,x);return}t.bindTexture(i.TEXTURE_3D,C.__webglTexture,i.TEXTURE0+x)}function Se(R,x){let C=n.get(R);if(R.version>0&&C.__version!==R.version){ve(C,R,x);return}t.bindTexture(i.TEXTURE_CUBE_MAP,C.__webglTexture,i.TEXTURE0+x)}let Oe={[Ji]:i.REPEAT,[Hn]:i.CLAMP_TO_EDGE,[pr]:i.MIRRORED_REPEAT},ct={[Dt]:i.NEAREST,[Hl]:i.NEAREST_MIPMAP_NEAREST,[Bs]:i.NEAREST_MIPMAP_LINEAR,[Vt]:i.LINEAR,[Or]:i.LINEAR_MIPMAP_NEAREST,[Wn]:i.LINEAR_MIPMAP_LINEAR},Xe={[lm]:i.NEVER,[Tu]:i.ALWAYS,[cm]:i.LESS,[Su]:i.LEQUAL,[hm]:i.EQUAL,[wu]:i.GEQUAL,[um]:i.GREATER,[dm]:i.NOTEQUAL};function B(R,x){if(x.type===Fn&&e.has("OES_texture_float_linear")===!1&&(x.magFilter===Vt||x.magFilter===Or||x.magFilter===Bs||x.magFilter===Wn||x.minFilter===Vt||x.minFilter===Or||x.minFilter===Bs||x.minFilter===Wn)&&We("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(R,i.TEXTURE_WRAP_S,Oe[x.wrapS]),i.texParameteri(R,i.TEXTURE_WRAP_T,Oe[x.wrapT]),(R===i.TEXTURE_3D||R===i.TEXTURE_2D_ARRAY)&&i.texParameteri(R,i.TEXTURE_WRAP_R,Oe[x.wrapR]),i.texParameteri(R,i.TEXTURE_MAG_FILTER,ct[x.magFilter]),i.texParameteri(R,i.TEXTURE_MIN_FILTER,ct[x.minFilter]),x.compareFunction&&(i.texParameteri(R,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(R,i.TEXTURE_COMPARE_FUNC,Xe[x.compareFunction])),e.has("EXT_texture_filter_anisotropic")===!0){if(x.magFilter===Dt||x.minFilter!==Bs&&x.minFilter!==Wn||x.type===Fn&&e.has("OES_texture_float_linear")===!1)return;if(x.anisotropy>1||n.get(x).__currentAnisotropy){let C=e.get("EXT_texture_filter_anisotropic");i.texParameterf(R,C.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(x.anisotropy,s.getMaxAnisotropy())),n.get(x).__currentAnisotropy=x.anisotropy}}}function ae(R,x){let C=!1;R.__webglInit===void 0&&(R.__webglInit=!0,x.addEventListener("dispose",D),F(x));let V=x.source,W=f.get(V);W===void 0&&(W={},f.set(V,W));let ie=H(x);if(ie!==R.__cacheKey){W[ie]===void 0&&(W[ie]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,C=!0),W[ie].usedTimes++;let fe=W[R.__cacheKey];fe!==void 0&&(W[R.__cacheKey].usedTimes--,fe.usedTimes===0&&Y(x)),R.__cacheKey=ie,R.__webglTexture=W[ie].texture}return C}function G(R,x,C){return Math.floor(Math.floor(R/C)/x)}function j(R,x,C,V){let ie=R.updateRanges;if(ie.length===0)t.texSubImage2D(i.TEXTURE_2D,0,0,0,x.width,x.height,C,V,x.data);else{ie.sort((A,Q)=>A.start-Q.start);let fe=0;for(let A=1;A<ie.length;A++){let Q=ie[fe],K=ie[A],ye=Q.start+Q.count,ge=G(K.start,x.width,4),be=G(Q.start,x.width,4);K.start<=ye+1&&ge===be&&G(K.start+K.count-1,x.width,4)===ge?Q.count=Math.max(Q.count,K.start+K.count-Q.start):(++fe,ie[fe]=K)}ie.length=fe+1;let te=t.getParameter(i.UNPACK_ROW_LENGTH),X=t.getParameter(i.UNPACK_SKIP_PIXELS),pe=t.getParameter(i.UNPACK_SKIP_ROWS);t.pixelStorei(i.UNPACK_ROW_LENGTH,x.width);for(let A=0,Q=ie.length;A<Q;A++){let K=ie[A],ye=Math.floor(K.start/4),ge=Math.ceil(K.count/4),be=ye%x.width,De=Math.floor(ye/x.width),Ze=ge,_e=1;t.pixelStorei(i.UNPACK_SKIP_PIXELS,be),t.pixelStorei(i.UNPACK_SKIP_ROWS,De),t.texSubImage2D(i.TEXTURE_2D,0,be,De,Ze,_e,C,V,x.data)}R.clearUpdateRanges(),t.pixelStorei(i.UNPACK_ROW_LENGTH,te),t.pixelStorei(i.UNPACK_SKIP_PIXELS,X),t.pixelStorei(i.UNPACK_SKIP_ROWS,pe)}}function he(R,x,C){let V=i.TEXTURE_2D;(x.isDataArrayTexture||x.isCompressedArrayTexture)&&(V=i.TEXTURE_2D_ARRAY),x.isData3DTexture&&(V=i.TEXTURE_3D);let W=ae(R,x),ie=x.source;t.bindTexture(V,R.__webglTexture,i.TEXTURE0+C);let fe=n.get(ie);if(ie.version!==fe.__version||W===!0){if(t.activeTexture(i.TEXTURE0+C),(typeof ImageBitmap<"u"&&x.image instanceof ImageBitmap)===!1){let _e=ht.getPrimaries(ht.workingColorSpace),$e=x.colorSpace===ki?null:ht.getPrimaries(x.colorSpace),st=x.colorSpace===ki||_e===$e?i.NONE:i.BROWSER_DEFAULT_WEBGL;t.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,x.flipY),t.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,x.premultiplyAlpha),t.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,st)}t.pixelStorei(i.UNPACK_ALIGNMENT,x.unpackAlignment);let X=v(x.image,!1,s.maxTextureSize);X=Ye(x,X);let pe=r.convert(x.format,x.colorSpace),A=r.convert(x.type),Q=T(x.internalFormat,pe,A,x.normalized,x.colorSpace,x.isVideoTexture);B(V,x);let K,ye=x.mipmaps,ge=x.isVideoTexture!==!0,be=fe.__version===void 0||W===!0,De=ie.dataReady,Ze=w(x,X);if(x.isDepthTexture)Q=y(x.format===Bi,x.type),be&&(ge?t.texStorage2D(i.TEXTURE_2D,1,Q,X.width,X.height):t.texImage2D(i.TEXTURE_2D,0,Q,X.width,X.height,0,pe,A,null));else if(x.isDataTexture)if(ye.length>0){ge&&be&&t.texStorage2D(i.TEXTURE_2D,Ze,Q,ye[0].width,ye[0].height);for(let _e=0,$e=ye.length;_e<$e;_e++)K=ye[_e],ge?De&&t.texSubImage2D(i.TEXTURE_2D,_e,0,0,K.width,K.height,pe,A,K.data):t.texImage2D(i.TEXTURE_2D,_e,Q,K.width,K.height,0,pe,A,K.data);x.generateMipmaps=!1}else ge?(be&&t.texStorage2D(i.TEXTURE_2D,Ze,Q,X.width,X.height),De&&j(x,X,pe,A)):t.texImage2D(i.TEXTURE_2D,0,Q,X.width,X.height,0,pe,A,X.data);else if(x.isCompressedTexture)if(x.isCompressedArrayTexture){ge&&be&&t.texStorage3D(i.TEXTURE_2D_ARRAY,Ze,Q,ye[0].width,ye[0].height,X.depth);for(let _e=0,$e=ye.length;_e<$e;_e++)if(K=ye[_e],x.format!==$n)if(pe!==null)if(ge){if(De)if(x.layerUpdates.size>0){let st=Ou(K.width,K.height,x.format,x.type);for(let Ie of x.layerUpdates){let gt=K.data.subarray(Ie*st/K.data.BYTES_PER_ELEMENT,(Ie+1)*st/K.data.BYTES_PER_ELEMENT);t.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,_e,0,0,Ie,K.width,K.height,1,pe,gt)}}else t.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,_e,0,0,0,K.width,K.height,X.depth,pe,K.data)}else t.compressedTexImage3D(i.TEXTURE_2D_ARRAY,_e,Q,K.width,K.height,X.depth,0,K.data,0,0);else We("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else ge?De&&t.texSubImage3D(i.TEXTURE_2D_ARRAY,_e,0,0,0,K.width,K.height,X.depth,pe,A,K.data):t.texImage3D(i.TEXTURE_2D_ARRAY,_e,Q,K.width,K.height,X.depth,0,pe,A,K.data);x.layerUpdates.size>0&&x.clearLayerUpdates()}else{ge&&be&&t.texStorage2D(i.TEXTURE_2D,Ze,Q,ye[0].width,ye[0].height);for(let _e=0,$e=ye.length;_e<$e;_e++)K=ye[_e],x.format!==$n?pe!==null?ge?De&&t.compressedTexSubImage2D(i.TEXTURE_2D,_e,0,0,K.width,K.height,pe,K.data):t.compressedTexImage2D(i.TEXTURE_2D,_e,Q,K.width,K.height,0,K.data):We("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):ge?De&&t.texSubImage2D(i.TEXTURE_2D,_e,0,0,K.width,K.height,pe,A,K.data):t.texImage2D(i.TEXTURE_2D,_e,Q,K.width,K.height,0,pe,A,K.data)}else if(x.isDataArrayTexture)if(ge){if(be&&t.texStorage3D(i.TEXTURE_2D_ARRAY,Ze,Q,X.width,X.height,X.depth),De)if(x.layerUpdates.size>0){let _e=Ou(X.width,X.height,x.format,x.type);for(let $e of x.layerUpdates){let st=X.data.subarray($e*_e/X.data.BYTES_PER_ELEMENT,($e+1)*_e/X.data.BYTES_PER_ELEMENT);t.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,$e,X.width,X.height,1,pe,A,st)}x.clearLayerUpdates()}else t.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,X.width,X.height,X.depth,pe,A,X.data)}else t.texImage3D(i.TEXTURE_2D_ARRAY,0,Q,X.width,X.height,X.depth,0,pe,A,X.data);else if(x.isData3DTexture)ge?(be&&t.texStorage3D(i.TEXTURE_3D,Ze,Q,X.width,X.height,X.depth),De&&t.texSubImage3D(i.TEXTURE_3D,0,0,0,0,X.width,X.height,X.depth,pe,A,X.data)):t.texImage3D(i.TEXTURE_3D,0,Q,X.width,X.height,X.depth,0,pe,A,X.data);else if(x.isFramebufferTexture){if(be)if(ge)t.texStorage2D(i.TEXTURE_2D,Ze,Q,X.width,X.height);else{let _e=X.width,$e=X.height;for(let st=0;st<Ze;st++)t.texImage2D(i.TEXTURE_2D,st,Q,_e,$e,0,pe,A,null),_e>>=1,$e>>=1}}else if(x.isHTMLTexture){if("texElementImage2D"in i){let _e=i.canvas;if(_e.hasAttribute("layoutsubtree")||_e.setAttribute("layoutsubtree","true"),X.parentNode!==_e){_e.appendChild(X),d.add(x),_e.onpaint=$e=>{let st=$e.changedElements;for(let Ie of d)st.includes(Ie.image)&&(Ie.needsUpdate=!0)},_e.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,X);else{let st=i.RGBA,Ie=i.RGBA,gt=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,st,Ie,gt,X)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(ye.length>0){if(ge&&be){let _e=Ke(ye[0]);t.texStorage2D(i.TEXTURE_2D,Ze,Q,_e.width,_e.height)}for(let _e=0,$e=ye.length;_e<$e;_e++)K=ye[_e],ge?De&&t.texSubImage2D(i.TEXTURE_2D,_e,0,0,pe,A,K):t.texImage2D(i.TEXTURE_2D,_e,Q,pe,A,K);x.generateMipmaps=!1}else if(ge){if(be){let _e=Ke(X);t.texStorage2D(i.TEXTURE_2D,Ze,Q,_e.width,_e.height)}De&&t.texSubImage2D(i.TEXTURE_2D,0,0,0,pe,A,X)}else t.texImage2D(i.TEXTURE_2D,0,Q,pe,A,X);M(x)&&x.mipmapsAutoUpdate===!0&&b(V),fe.__version=ie.version,x.onUpdate&&x.onUpdate(x)}R.__version=x.version}function ve(R,x,C){if(x.image.length!==6)return;let V=ae(R,x),W=x.source;t.bindTexture(i.TEXTURE_CUBE_MAP,R.__webglTexture,i.TEXTURE0+C);let ie=n.get(W);if(W.version!==ie.__version||V===!0){t.activeTexture(i.TEXTURE0+C);let fe=ht.getPrimaries(ht.workingColorSpace),te=x.colorSpace===ki?null:ht.getPrimaries(x.colorSpace),X=x.colorSpace===ki||fe===te?i.NONE:i.BROWSER_DEFAULT_WEBGL;t.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,x.flipY),t.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,x.premultiplyAlpha),t.pixelStorei(i.UNPACK_ALIGNMENT,x.unpackAlignment),t.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,X);let pe=x.isCompressedTexture||x.image[0].isCompressedTexture,A=x.image[0]&&x.image[0].isDataTexture,Q=[];for(let Ie=0;Ie<6;Ie++)!pe&&!A?Q[Ie]=v(x.image[Ie],!0,s.maxCubemapSize):Q[Ie]=A?x.image[Ie].image:x.image[Ie],Q[Ie]=Ye(x,Q[Ie]);let K=Q[0],ye=r.convert(x.format,x.colorSpace),ge=r.convert(x.type),be=T(x.internalFormat,ye,ge,x.normalized,x.colorSpace),De=x.isVideoTexture!==!0,Ze=ie.__version===void 0||V===!0,_e=W.dataReady,$e=w(x,K);B(i.TEXTURE_CUBE_MAP,x);let st;if(x.isDepthTexture){if(be=y(x.format===Bi,x.type),Ze)if(De)t.texStorage2D(i.TEXTURE_CUBE_MAP,1,be,K.width,K.height);else for(let Ie=0;Ie<6;Ie++)t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,0,be,K.width,K.height,0,ye,ge,null)}else if(pe){De&&Ze&&t.texStorage2D(i.TEXTURE_CUBE_MAP,$e,be,K.width,K.height);for(let Ie=0;Ie<6;Ie++){st=Q[Ie].mipmaps;for(let gt=0;gt<st.length;gt++){let Yt=st[gt];x.format!==$n?ye!==null?De?_e&&t.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,gt,0,0,Yt.width,Yt.height,ye,Yt.data):t.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,gt,be,Yt.width,Yt.height,0,Yt.data):We("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):De?_e&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,gt,0,0,Yt.width,Yt.height,ye,ge,Yt.data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,gt,be,Yt.width,Yt.height,0,ye,ge,Yt.data)}}}else{if(st=x.mipmaps,De&&Ze){st.length>0&&$e++;let Ie=Ke(Q[0]);t.texStorage2D(i.TEXTURE_CUBE_MAP,$e,be,Ie.width,Ie.height)}for(let Ie=0;Ie<6;Ie++)if(A){De?_e&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,0,0,0,Q[Ie].width,Q[Ie].height,ye,ge,Q[Ie].data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,0,be,Q[Ie].width,Q[Ie].height,0,ye,ge,Q[Ie].data);for(let gt=0;gt<st.length;gt++){let Gi=st[gt].image[Ie].image;De?_e&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,gt+1,0,0,Gi.width,Gi.height,ye,ge,Gi.data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,gt+1,be,Gi.width,Gi.height,0,ye,ge,Gi.data)}}else{De?_e&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,0,0,0,ye,ge,Q[Ie]):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,0,be,ye,ge,Q[Ie]);for(let gt=0;gt<st.length;gt++){let Yt=st[gt];De?_e&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,gt+1,0,0,ye,ge,Yt.image[Ie]):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ie,gt+1,be,ye,ge,Yt.image[Ie])}}}M(x)&&x.mipmapsAutoUpdate===!0&&b(i.TEXTURE_CUBE_MAP),ie.__version=W.version,x.onUpdate&&x.onUpdate(x)}R.__version=x.version}function de(R,x,C,V,W,ie){let fe=r.convert(C.format,C.colorSpace),te=r.convert(C.type),X=T(C.internalFormat,fe,te,C.normalized,C.colorSpace),pe=n.get(x),A=n.get(C);if(A.__renderTarget=x,!pe.__hasExternalTextures){let Q=Math.max(1,x.width>>ie),K=Math.max(1,x.height>>ie);W===i.TEXTURE_3D||W===i.TEXTURE_2D_ARRAY?t.texImage3D(W,ie,X,Q,K,x.depth,0,fe,te,null):t.texImage2D(W,ie,X,Q,K,0,fe,te,null)}t.bindFramebuffer(i.FRAMEBUFFER,R),Ee(x)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,V,W,A.__webglTexture,0,pt(x)):(W===i.TEXTURE_2D||W>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&W<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,V,W,A.__webglTexture,ie),t.bindFramebuffer(i.FRAMEBUFFER,null)}function Fe(R,x,C){if(i.bindRenderbuffer(i.RENDERBUFFER,R),x.depthBuffer){let V=x.depthTexture,W=V&&V.isDepthTexture?V.type:null,ie=y(x.stencilBuffer,W),fe=x.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;Ee(x)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,pt(x),ie,x.width,x.height):C?i.renderbufferStorageMultisample(i.RENDERBUFFER,pt(x),ie,x.width,x.height):i.renderbufferStorage(i.RENDERBUFFER,ie,x.width,x.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,fe,i.RENDERBUFFER,R)}else{let V=x.textures;for(let W=0;W<V.length;W++){let ie=V[W],fe=r.convert(ie.format,ie.colorSpace),te=r.convert(ie.type),X=T(ie.internalFormat,fe,te,ie.normalized,ie.colorSpace);Ee(x)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,pt(x),X,x.width,x.height):C?i.renderbufferStorageMultisample(i.RENDERBUFFER,pt(x),X,x.width,x.height):i.renderbufferStorage(i.RENDERBUFFER,X,x.width,x.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function Ce(R,x,C){let V=x.isWebGLCubeRenderTarget===!0;if(t.bindFramebuffer(i.FRAMEBUFFER,R),!(x.depthTexture&&x.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let W=n.get(x.depthTexture);W.__renderTarget=x;let ie=V?x.depthTexture.image[0]:x.depthTexture.image;(!W.__webglTexture||ie.width!==x.width||ie.height!==x.height)&&(ie.width=x.width,ie.height=x.height,x.depthTexture.needsUpdate=!0),V?Se(x.depthTexture,0):le(x.depthTexture,0);let fe=W.__webglTexture,te=pt(x),X=V?i.TEXTURE_CUBE_MAP_POSITIVE_X+C:i.TEXTURE_2D,pe=x.depthTexture.format===Bi?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(x.depthTexture.format===Ri)Ee(x)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,pe,X,fe,0,te):i.framebufferTexture2D(i.FRAMEBUFFER,pe,X,fe,0);else if(x.depthTexture.format===Bi)Ee(x)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,pe,X,fe,0,te):i.framebufferTexture2D(i.FRAMEBUFFER,pe,X,fe,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function Me(R){let x=n.get(R),C=R.isWebGLCubeRenderTarget===!0;if(x.__boundDepthTexture!==R.depthTexture){let V=R.depthTexture;if(x.__depthDisposeCallback&&x.__depthDisposeCallback(),V){let W=()=>{delete x.__boundDepthTexture,delete x.__depthDisposeCallback,V.removeEventListener("dispose",W)};V.addEventListener("dispose",W),x.__depthDisposeCallback=W}x.__boundDepthTexture=V}if(R.depthTexture&&!x.__autoAllocateDepthBuffer)if(C)for(let V=0;V<6;V++)Ce(x.__webglFramebuffer[V],R,V);else R.texture.mipmaps.length>0?Ce(x.__webglFramebuffer[0],R,0):Ce(x.__webglFramebuffer,R,0);else if(C){x.__webglDepthbuffer=[];for(let V=0;V<6;V++)if(t.bindFramebuffer(i.FRAMEBUFFER,x.__webglFramebuffer[V]),x.__webglDepthbuffer[V]===void 0)x.__webglDepthbuffer[V]=i.createRenderbuffer(),Fe(x.__webglDepthbuffer[V],R,!1);else{let W=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,ie=x.__webglDepthbuffer[V];i.bindRenderbuffer(i.RENDERBUFFER,ie),i.framebufferRenderbuffer(i.FRAMEBUFFER,W,i.RENDERBUFFER,ie)}}else if(R.texture.mipmaps.length>0?t.bindFramebuffer(i.FRAMEBUFFER,x.__webglFramebuffer[0]):t.bindFramebuffer(i.FRAMEBUFFER,x.__webglFramebuffer),x.__webglDepthbuffer===void 0)x.__webglDepthbuffer=i.createRenderbuffer(),Fe(x.__webglDepthbuffer,R,!1);else{let W=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,ie=x.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,ie),i.framebufferRenderbuffer(i.FRAMEBUFFER,W,i.RENDERBUFFER,ie)}t.bindFramebuffer(i.FRAMEBUFFER,null)}function qe(R,x,C){let V=n.get(R);x!==void 0&&de(V.__webglFramebuffer,R,R.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),C!==void 0&&Me(R)}function at(R){let x=R.texture,C=n.get(R),V=n.get(x);R.addEventListener("dispose",$),F(R);let W=R.textures,ie=R.isWebGLCubeRenderTarget===!0,fe=W.length>1;if(fe||(V.__webglTexture===void 0&&(V.__webglTexture=i.createTexture()),V.__version=x.version,o.memory.textures++),ie){C.__webglFramebuffer=[];for(let te=0;te<6;te++)if(x.mipmaps.length>0){C.__webglFramebuffer[te]=[];for(let X=0;X<x.mipmaps.length;X++)C.__webglFramebuffer[te][X]=i.createFramebuffer()}else C.__webglFramebuffer[te]=i.createFramebuffer()}else{if(x.mipmaps.length>0){C.__webglFramebuffer=[];for(let te=0;te<x.mipmaps.length;te++)C.__webglFramebuffer[te]=i.createFramebuffer()}else C.__webglFramebuffer=i.createFramebuffer();if(fe)for(let te=0,X=W.length;te<X;te++){let pe=n.get(W[te]);pe.__webglTexture===void 0&&(pe.__webglTexture=i.createTexture(),o.memory.textures++)}if(R.samples>0&&Ee(R)===!1){C.__webglMultisampledFramebuffer=i.createFramebuffer(),C.__webglColorRenderbuffer=[],t.bindFramebuffer(i.FRAMEBUFFER,C.__webglMultisampledFramebuffer);for(let te=0;te<W.length;te++){let X=W[te];C.__webglColorRenderbuffer[te]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,C.__webglColorRenderbuffer[te]);let pe=r.convert(X.format,X.colorSpace),A=r.convert(X.type),Q=T(X.internalFormat,pe,A,X.normalized,X.colorSpace,R.isXRRenderTarget===!0),K=pt(R);i.renderbufferStorageMultisample(i.RENDERBUFFER,K,Q,R.width,R.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+te,i.RENDERBUFFER,C.__webglColorRenderbuffer[te])}i.bindRenderbuffer(i.RENDERBUFFER,null),R.depthBuffer&&(C.__webglDepthRenderbuffer=i.createRenderbuffer(),Fe(C.__webglDepthRenderbuffer,R,!0)),t.bindFramebuffer(i.FRAMEBUFFER,null)}}if(ie){t.bindTexture(i.TEXTURE_CUBE_MAP,V.__webglTexture),B(i.TEXTURE_CUBE_MAP,x);for(let te=0;te<6;te++)if(x.mipmaps.length>0)for(let X=0;X<x.mipmaps.length;X++)de(C.__webglFramebuffer[te][X],R,x,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+te,X);else de(C.__webglFramebuffer[te],R,x,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+te,0);M(x)?b(i.TEXTURE_CUBE_MAP):x.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,x.mipmaps.length-1),t.unbindTexture()}else if(fe){for(let te=0,X=W.length;te<X;te++){let pe=W[te],A=n.get(pe),Q=i.TEXTURE_2D;(R.isWebGL3DRenderTarget||R.isWebGLArrayRenderTarget)&&(Q=R.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),t.bindTexture(Q,A.__webglTexture),B(Q,pe),de(C.__webglFramebuffer,R,pe,i.COLOR_ATTACHMENT0+te,Q,0),M(pe)&&b(Q)}t.unbindTexture()}else{let te=i.TEXTURE_2D;if((R.isWebGL3DRenderTarget||R.isWebGLArrayRenderTarget)&&(te=R.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),t.bindTexture(te,V.__webglTexture),B(te,x),x.mipmaps.length>0)for(let X=0;X<x.mipmaps.length;X++)de(C.__webglFramebuffer[X],R,x,i.COLOR_ATTACHMENT0,te,X);else de(C.__webglFramebuffer,R,x,i.COLOR_ATTACHMENT0,te,0);M(x)?b(te):x.mipmaps.length>0&&i.texParameteri(te,i.TEXTURE_MAX_LEVEL,x.mipmaps.length-1),t.unbindTexture()}R.depthBuffer&&Me(R)}function U(R){let x=R.textures;for(let C=0,V=x.length;C<V;C++){let W=x[C];if(M(W)&&W.mipmapsAutoUpdate===!0){let ie=S(R),fe=n.get(W).__webglTexture;t.bindTexture(ie,fe),b(ie),t.unbindTexture()}}}let _t=[];function Qe(R){if(R.samples>0){if(Ee(R)===!1){let x=R.textures,C=R.width,V=R.height,W=i.COLOR_BUFFER_BIT,ie=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,fe=n.get(R),te=x.length>1;if(te)for(let pe=0;pe<x.length;pe++)t.bindFramebuffer(i.FRAMEBUFFER,fe.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+pe,i.RENDERBUFFER,null),t.bindFramebuffer(i.FRAMEBUFFER,fe.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+pe,i.TEXTURE_2D,null,0);t.bindFramebuffer(i.READ_FRAMEBUFFER,fe.__webglMultisampledFramebuffer),R.texture.mipmaps.length>0?t.bindFramebuffer(i.DRAW_FRAMEBUFFER,fe.__webglFramebuffer[0]):t.bindFramebuffer(i.DRAW_FRAMEBUFFER,fe.__webglFramebuffer);for(let pe=0;pe<x.length;pe++){if(R.resolveDepthBuffer&&(R.depthBuffer&&(W|=i.DEPTH_BUFFER_BIT),R.stencilBuffer&&R.resolveStencilBuffer&&(W|=i.STENCIL_BUFFER_BIT)),te){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,fe.__webglColorRenderbuffer[pe]);let A=n.get(x[pe]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,A,0)}i.blitFramebuffer(0,0,C,V,0,0,C,V,W,i.NEAREST),c===!0&&(_t.length=0,_t.push(i.COLOR_ATTACHMENT0+pe),R.depthBuffer&&R.storeMultisampledDepthBuffer===!1&&_t.push(ie),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,_t))}if(t.bindFramebuffer(i.READ_FRAMEBUFFER,null),t.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),te)for(let pe=0;pe<x.length;pe++){t.bindFramebuffer(i.FRAMEBUFFER,fe.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+pe,i.RENDERBUFFER,fe.__webglColorRenderbuffer[pe]);let A=n.get(x[pe]).__webglTexture;t.bindFramebuffer(i.FRAMEBUFFER,fe.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+pe,i.TEXTURE_2D,A,0)}t.bindFramebuffer(i.DRAW_FRAMEBUFFER,fe.__webglMultisampledFramebuffer)}else if(R.depthBuffer&&R.storeMultisampledDepthBuffer===!1&&c){let x=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[x])}}}function pt(R){return Math.min(s.maxSamples,R.samples)}function Ee(R){let x=n.get(R);return R.samples>0&&e.has("WEBGL_multisampled_render_to_texture")===!0&&x.__useRenderToTexture!==!1}function Et(R){let x=o.render.frame;h.get(R)!==x&&(h.set(R,x),R.update())}function Ye(R,x){let C=R.colorSpace,V=R.format,W=R.type;return R.isCompressedTexture===!0||R.isVideoTexture===!0||C!==_n&&C!==ki&&(ht.getTransfer(C)===vt?(V!==$n||W!==Rn)&&We("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):Je("WebGLTextures: Unsupported texture color space:",C)),x}function Ke(R){return typeof HTMLImageElement<"u"&&R instanceof HTMLImageElement?(l.width=R.naturalWidth||R.width,l.height=R.naturalHeight||R.height):typeof VideoFrame<"u"&&R instanceof VideoFrame?(l.width=R.displayWidth,l.height=R.displayHeight):(l.width=R.width,l.height=R.height),l}this.allocateTextureUnit=ne,this.resetTextureUnits=ce,this.getTextureUnits=ue,this.setTextureUnits=Pe,this.setTexture2D=le,this.setTexture2DArray=we,this.setTexture3D=Ue,this.setTextureCube=Se,this.rebindTextures=qe,this.setupRenderTarget=at,this.updateRenderTargetMipmap=U,this.updateMultisampleRenderTarget=Qe,this.setupDepthRenderbuffer=Me,this.setupFrameBufferTexture=de,this.useMultisampledRTT=Ee,this.dispose=k}function rS(i,e){function t(n,s=ki){let r,o=ht.getTransfer(s);if(n===Rn)return i.UNSIGNED_BYTE;if(n===Vl)return i.UNSIGNED_SHORT_4_4_4_4;if(n===Wl)return i.UNSIGNED_SHORT_5_5_5_1;if(n===xu)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===yu)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===gu)return i.BYTE;if(n===_u)return i.SHORT;if(n===Fr)return i.UNSIGNED_SHORT;if(n===Gl)return i.INT;if(n===ii)return i.UNSIGNED_INT;if(n===Fn)return i.FLOAT;if(n===si)return i.HALF_FLOAT;if(n===vu)return i.ALPHA;if(n===bu)return i.RGB;if(n===$n)return i.RGBA;if(n===Ri)return i.DEPTH_COMPONENT;if(n===Bi)return i.DEPTH_STENCIL;if(n===$l)return i.RED;if(n===Xl)return i.RED_INTEGER;if(n===as)return i.RG;if(n===ql)return i.RG_INTEGER;if(n===Yl)return i.RGBA_INTEGER;if(n===ea||n===ta||n===na||n===ia)if(o===vt)if(r=e.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===ea)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===ta)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===na)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===ia)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=e.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===ea)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===ta)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===na)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===ia)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===jl||n===Kl||n===Zl||n===Jl)if(r=e.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===jl)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===Kl)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===Zl)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===Jl)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===Ql||n===ec||n===tc||n===nc||n===ic||n===sa||n===sc)if(r=e.get("WEBGL_compressed_texture_etc"),r!==null){if(n===Ql||n===ec)return o===vt?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===tc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===nc)return r.COMPRESSED_R11_EAC;if(n===ic)return r.COMPRESSED_SIGNED_R11_EAC;if(n===sa)return r.COMPRESSED_RG11_EAC;if(n===sc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===rc||n===oc||n===ac||n===lc||n===cc||n===hc||n===uc||n===dc||n===fc||n===pc||n===mc||n===gc||n===_c||n===xc)if(r=e.get("WEBGL_compressed_texture_astc"),r!==null){if(n===rc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===oc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===ac)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===lc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===cc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===hc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===uc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===dc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===fc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===pc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===mc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===gc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===_c)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===xc)return o===vt?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===yc||n===vc||n===bc)if(r=e.get("EXT_texture_compression_bptc"),r!==null){if(n===yc)return o===vt?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===vc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===bc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Mc||n===Sc||n===ra||n===wc)if(r=e.get("EXT_texture_compression_rgtc"),r!==null){if(n===Mc)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Sc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===ra)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===wc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===ks?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:t}}var oS=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,aS=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,Ku=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(e,t){if(this.texture===null){let n=new Io(e.texture);(e.depthNear!==t.depthNear||e.depthFar!==t.depthFar)&&(this.depthNear=e.depthNear,this.depthFar=e.depthFar),this.texture=n}}getMesh(e){if(this.texture!==null&&this.mesh===null){let t=e.cameras[0].viewport,n=new ui({vertexShader:oS,fragmentShader:aS,uniforms:{depthColor:{value:this.texture},depthWidth:{value:t.z},depthHeight:{value:t.w}}});this.mesh=new Ut(new zo(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},Zu=class extends ti{constructor(e,t){super();let n=this,s=null,r=1,o=null,a="local-floor",c=1,l=null,h=null,d=null,u=null,f=null,p=null,_=typeof XRWebGLBinding<"u",g=new Ku,m={},v=t.getContextAttributes(),M=null,b=null,S=[],T=[],y=new xe,w=null,F=null,I=new Gt;I.viewport=new bt;let D=new Gt;D.viewport=new bt;let $=[I,D],J=new Ol,P=null,k=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(H){let le=S[H];return le===void 0&&(le=new vr,S[H]=le),le.getTargetRaySpace()},this.getControllerGrip=function(H){let le=S[H];return le===void 0&&(le=new vr,S[H]=le),le.getGripSpace()},this.getHand=function(H){let le=S[H];return le===void 0&&(le=new vr,S[H]=le),le.getHandSpace()};function re(H){let le=T.indexOf(H.inputSource);if(le===-1)return;let we=S[le];we!==void 0&&(we.update(H.inputSource,H.frame,l||o),we.dispatchEvent({type:H.type,data:H.inputSource}))}function Y(){s.removeEventListener("select",re),s.removeEventListener("selectstart",re),s.removeEventListener("selectend",re),s.removeEventListener("squeeze",re),s.removeEventListener("squeezestart",re),s.removeEventListener("squeezeend",re),s.removeEventListener("end",Y),s.removeEventListener("inputsourceschange",me);for(let H=0;H<S.length;H++){let le=T[H];le!==null&&(T[H]=null,S[H].disconnect(le))}P=null,k=null,g.reset();for(let H in m)delete m[H];if(e.setRenderTarget(M),f=null,u=null,d=null,s=null,b=null,ne.stop(),n.isPresenting=!1,e.setPixelRatio(w),e.setSize(y.width,y.height,!1),F!==null){let H=F.camera;H.fov=F.fov,H.zoom=F.zoom,H.updateProjectionMatrix(),F=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(H){r=H,n.isPresenting===!0&&We("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(H){a=H,n.isPresenting===!0&&We("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return l||o},this.setReferenceSpace=function(H){l=H},this.getBaseLayer=function(){return u!==null?u:f},this.getBinding=function(){return d===null&&_&&(d=new XRWebGLBinding(s,t)),d},this.getFrame=function(){return p},this.getSession=function(){return s},this.setSession=async function(H){if(s=H,s!==null){if(M=e.getRenderTarget(),s.addEventListener("select",re),s.addEventListener("selectstart",re),s.addEventListener("selectend",re),s.addEventListener("squeeze",re),s.addEventListener("squeezestart",re),s.addEventListener("squeezeend",re),s.addEventListener("end",Y),s.addEventListener("inputsourceschange",me),v.xrCompatible!==!0&&await t.makeXRCompatible(),w=e.getPixelRatio(),e.getSize(y),_&&"createProjectionLayer"in XRWebGLBinding.prototype){let we=null,Ue=null,Se=null;v.depth&&(Se=v.stencil?t.DEPTH24_STENCIL8:t.DEPTH_COMPONENT24,we=v.stencil?Bi:Ri,Ue=v.stencil?ks:ii);let Oe={colorFormat:t.RGBA8,depthFormat:Se,scaleFactor:r};d=this.getBinding(),u=d.createProjectionLayer(Oe),s.updateRenderState({layers:[u]}),e.setPixelRatio(1),e.setSize(u.textureWidth,u.textureHeight,!1),b=new Un(u.textureWidth,u.textureHeight,{format:$n,type:Rn,depthTexture:new Ii(u.textureWidth,u.textureHeight,Ue,void 0,void 0,void 0,void 0,void 0,void 0,we),stencilBuffer:v.stencil,colorSpace:e.outputColorSpace,samples:v.antialias?4:0,resolveDepthBuffer:u.ignoreDepthValues===!1,resolveStencilBuffer:u.ignoreDepthValues===!1,storeMultisampledDepthBuffer:u.ignoreDepthValues===!1,storeMultisampledStencilBuffer:u.ignoreDepthValues===!1})}else{let we={antialias:v.antialias,alpha:!0,depth:v.depth,stencil:v.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,t,we),s.updateRenderState({baseLayer:f}),e.setPixelRatio(1),e.setSize(f.framebufferWidth,f.framebufferHeight,!1),b=new Un(f.framebufferWidth,f.framebufferHeight,{format:$n,type:Rn,colorSpace:e.outputColorSpace,stencilBuffer:v.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}b.isXRRenderTarget=!0,this.setFoveation(c),l=null,o=await s.requestReferenceSpace(a),ne.setContext(s),ne.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return g.getDepthTexture()};function me(H){for(let le=0;le<H.removed.length;le++){let we=H.removed[le],Ue=T.indexOf(we);Ue>=0&&(T[Ue]=null,S[Ue].disconnect(we))}for(let le=0;le<H.added.length;le++){let we=H.added[le],Ue=T.indexOf(we);if(Ue===-1){for(let Oe=0;Oe<S.length;Oe++)if(Oe>=T.length){T.push(we),Ue=Oe;break}else if(T[Oe]===null){T[Oe]=we,Ue=Oe;break}if(Ue===-1)break}let Se=S[Ue];Se&&Se.connect(we)}}function se(H,le){le===null?H.matrixWorld.copy(H.matrix):H.matrixWorld.multiplyMatrices(le.matrixWorld,H.matrix),H.matrixWorldInverse.copy(H.matrixWorld).invert()}this.updateCamera=function(H){if(s===null)return;let le=H.near,we=H.far;g.texture!==null&&(g.depthNear>0&&(le=g.depthNear),g.depthFar>0&&(we=g.depthFar)),J.near=D.near=I.near=le,J.far=D.far=I.far=we,(P!==J.near||k!==J.far)&&(s.updateRenderState({depthNear:J.near,depthFar:J.far}),P=J.near,k=J.far),J.layers.mask=H.layers.mask|6,I.layers.mask=J.layers.mask&-5,D.layers.mask=J.layers.mask&-3;let Ue=H.parent,Se=J.cameras;se(J,Ue);for(let Oe=0;Oe<Se.length;Oe++)se(Se[Oe],Ue);J.projectionMatrix.copy(I.projectionMatrix),J.projectionMatrixInverse.copy(I.projectionMatrixInverse),F===null&&H.isPerspectiveCamera&&(F={camera:H,fov:H.fov,zoom:H.zoom}),ce(H,J,Ue)};function ce(H,le,we){we===null?H.matrix.copy(le.matrixWorld):(H.matrix.copy(we.matrixWorld),H.matrix.invert(),H.matrix.multiply(le.matrixWorld)),H.matrix.decompose(H.position,H.quaternion,H.scale),H.updateMatrixWorld(!0),H.projectionMatrix.copy(le.projectionMatrix),H.projectionMatrixInverse.copy(le.projectionMatrixInverse),H.isPerspectiveCamera&&(H.fov=As*2*Math.atan(1/H.projectionMatrix.elements[5]),H.zoom=1)}this.getCamera=function(){return J},this.getFoveation=function(){if(!(u===null&&f===null))return c},this.setFoveation=function(H){c=H,u!==null&&(u.fixedFoveation=H),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=H)},this.hasDepthSensing=function(){return g.texture!==null},this.getDepthSensingMesh=function(){return g.getMesh(J)},this.getCameraTexture=function(H){return m[H]};let ue=null;function Pe(H,le){if(h=le.getViewerPose(l||o),p=le,h!==null){let we=h.views;f!==null&&(e.setRenderTargetFramebuffer(b,f.framebuffer),e.setRenderTarget(b));let Ue=!1;we.length!==J.cameras.length&&(J.cameras.length=0,Ue=!0);for(let Xe=0;Xe<we.length;Xe++){let B=we[Xe],ae=null;if(f!==null)ae=f.getViewport(B);else{let j=d.getViewSubImage(u,B);ae=j.viewport,Xe===0&&(e.setRenderTargetTextures(b,j.colorTexture,j.depthStencilTexture),e.setRenderTarget(b))}let G=$[Xe];G===void 0&&(G=new Gt,G.layers.enable(Xe),G.viewport=new bt,$[Xe]=G),G.matrix.fromArray(B.transform.matrix),G.matrix.decompose(G.position,G.quaternion,G.scale),G.projectionMatrix.fromArray(B.projectionMatrix),G.projectionMatrixInverse.copy(G.projectionMatrix).invert(),G.viewport.set(ae.x,ae.y,ae.width,ae.height),Xe===0&&(J.matrix.copy(G.matrix),J.matrix.decompose(J.position,J.quaternion,J.scale)),Ue===!0&&J.cameras.push(G)}let Se=s.enabledFeatures;if(Se&&Se.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&_){d=n.getBinding();let Xe=d.getDepthInformation(we[0]);Xe&&Xe.isValid&&Xe.texture&&g.init(Xe,s.renderState)}if(Se&&Se.includes("camera-access")&&_){e.state.unbindTexture(),d=n.getBinding();for(let Xe=0;Xe<we.length;Xe++){let B=we[Xe].camera;if(B){let ae=m[B];ae||(ae=new Io,m[B]=ae);let G=d.getCameraImage(B);ae.sourceTexture=G}}}}for(let we=0;we<S.length;we++){let Ue=T[we],Se=S[we];Ue!==null&&Se!==void 0&&Se.update(Ue,le,l||o)}ue&&ue(H,le),le.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:le}),p=null}let ne=new Xm;ne.setAnimationLoop(Pe),this.setAnimationLoop=function(H){ue=H},this.dispose=function(){}}},lS=new je,ng=new tt;ng.set(-1,0,0,0,1,0,0,0,1);function cS(i,e){function t(g,m){g.matrixAutoUpdate===!0&&g.updateMatrix(),m.value.copy(g.matrix)}function n(g,m){m.color.getRGB(g.fogColor.value,Nu(i)),m.isFog?(g.fogNear.value=m.near,g.fogFar.value=m.far):m.isFogExp2&&(g.fogDensity.value=m.density)}function s(g,m,v,M,b){m.isNodeMaterial?m.uniformsNeedUpdate=!1:m.isMeshBasicMaterial?r(g,m):m.isMeshLambertMaterial?(r(g,m),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)):m.isMeshToonMaterial?(r(g,m),d(g,m)):m.isMeshPhongMaterial?(r(g,m),h(g,m),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)):m.isMeshStandardMaterial?(r(g,m),u(g,m),m.isMeshPhysicalMaterial&&f(g,m,b)):m.isMeshMatcapMaterial?(r(g,m),p(g,m)):m.isMeshDepthMaterial?r(g,m):m.isMeshDistanceMaterial?(r(g,m),_(g,m)):m.isMeshNormalMaterial?r(g,m):m.isLineBasicMaterial?(o(g,m),m.isLineDashedMaterial&&a(g,m)):m.isPointsMaterial?c(g,m,v,M):m.isSpriteMaterial?l(g,m):m.isShadowMaterial?(g.color.value.copy(m.color),g.opacity.value=m.opacity):m.isShaderMaterial&&(m.uniformsNeedUpdate=!1)}function r(g,m){g.opacity.value=m.opacity,m.color&&g.diffuse.value.copy(m.color),m.emissive&&g.emissive.value.copy(m.emissive).multiplyScalar(m.emissiveIntensity),m.map&&(g.map.value=m.map,t(m.map,g.mapTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,t(m.alphaMap,g.alphaMapTransform)),m.bumpMap&&(g.bumpMap.value=m.bumpMap,t(m.bumpMap,g.bumpMapTransform),g.bumpScale.value=m.bumpScale,m.side===yn&&(g.bumpScale.value*=-1)),m.normalMap&&(g.normalMap.value=m.normalMap,t(m.normalMap,g.normalMapTransform),g.normalScale.value.copy(m.normalScale),m.side===yn&&g.normalScale.value.negate()),m.displacementMap&&(g.displacementMap.value=m.displacementMap,t(m.displacementMap,g.displacementMapTransform),g.displacementScale.value=m.displacementScale,g.displacementBias.value=m.displacementBias),m.emissiveMap&&(g.emissiveMap.value=m.emissiveMap,t(m.emissiveMap,g.emissiveMapTransform)),m.specularMap&&(g.specularMap.value=m.specularMap,t(m.specularMap,g.specularMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest);let v=e.get(m),M=v.envMap,b=v.envMapRotation;M&&(g.envMap.value=M,g.envMapRotation.value.setFromMatrix4(lS.makeRotationFromEuler(b)).transpose(),M.isCubeTexture&&M.isRenderTargetTexture===!1&&g.envMapRotation.value.premultiply(ng),g.reflectivity.value=m.reflectivity,g.ior.value=m.ior,g.refractionRatio.value=m.refractionRatio),m.lightMap&&(g.lightMap.value=m.lightMap,g.lightMapIntensity.value=m.lightMapIntensity,t(m.lightMap,g.lightMapTransform)),m.aoMap&&(g.aoMap.value=m.aoMap,g.aoMapIntensity.value=m.aoMapIntensity,t(m.aoMap,g.aoMapTransform))}function o(g,m){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,m.map&&(g.map.value=m.map,t(m.map,g.mapTransform))}function a(g,m){g.dashSize.value=m.dashSize,g.totalSize.value=m.dashSize+m.gapSize,g.scale.value=m.scale}function c(g,m,v,M){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,g.size.value=m.size*v,g.scale.value=M*.5,m.map&&(g.map.value=m.map,t(m.map,g.uvTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,t(m.alphaMap,g.alphaMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest)}function l(g,m){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,g.rotation.value=m.rotation,m.map&&(g.map.value=m.map,t(m.map,g.mapTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,t(m.alphaMap,g.alphaMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest)}function h(g,m){g.specular.value.copy(m.specular),g.shininess.value=Math.max(m.shininess,1e-4)}function d(g,m){m.gradientMap&&(g.gradientMap.value=m.gradientMap)}function u(g,m){g.metalness.value=m.metalness,m.metalnessMap&&(g.metalnessMap.value=m.metalnessMap,t(m.metalnessMap,g.metalnessMapTransform)),g.roughness.value=m.roughness,m.roughnessMap&&(g.roughnessMap.value=m.roughnessMap,t(m.roughnessMap,g.roughnessMapTransform)),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)}function f(g,m,v){g.ior.value=m.ior,m.diffuseRoughness>0&&(g.diffuseRoughness.value=m.diffuseRoughness,m.diffuseRoughnessMap&&(g.diffuseRoughnessMap.value=m.diffuseRoughnessMap,t(m.diffuseRoughnessMap,g.diffuseRoughnessMapTransform))),m.sheen>0&&(g.sheenColor.value.copy(m.sheenColor).multiplyScalar(m.sheen),g.sheenRoughness.value=m.sheenRoughness,m.sheenColorMap&&(g.sheenColorMap.value=m.sheenColorMap,t(m.sheenColorMap,g.sheenColorMapTransform)),m.sheenRoughnessMap&&(g.sheenRoughnessMap.value=m.sheenRoughnessMap,t(m.sheenRoughnessMap,g.sheenRoughnessMapTransform))),m.clearcoat>0&&(g.clearcoat.value=m.clearcoat,g.clearcoatRoughness.value=m.clearcoatRoughness,m.clearcoatMap&&(g.clearcoatMap.value=m.clearcoatMap,t(m.clearcoatMap,g.clearcoatMapTransform)),m.clearcoatRoughnessMap&&(g.clearcoatRoughnessMap.value=m.clearcoatRoughnessMap,t(m.clearcoatRoughnessMap,g.clearcoatRoughnessMapTransform)),m.clearcoatNormalMap&&(g.clearcoatNormalMap.value=m.clearcoatNormalMap,t(m.clearcoatNormalMap,g.clearcoatNormalMapTransform),g.clearcoatNormalScale.value.copy(m.clearcoatNormalScale),m.side===yn&&g.clearcoatNormalScale.value.negate())),m.dispersion>0&&(g.dispersion.value=m.dispersion),m.retroreflectivity>0&&(g.retroreflectivity.value=m.retroreflectivity),m.iridescence>0&&(g.iridescence.value=m.iridescence,g.iridescenceIOR.value=m.iridescenceIOR,g.iridescenceThicknessMinimum.value=m.iridescenceThicknessMinimum,g.iridescenceThicknessMaximum.value=m.iridescenceThicknessMaximum,m.iridescenceMap&&(g.iridescenceMap.value=m.iridescenceMap,t(m.iridescenceMap,g.iridescenceMapTransform)),m.iridescenceThicknessMap&&(g.iridescenceThicknessMap.value=m.iridescenceThicknessMap,t(m.iridescenceThicknessMap,g.iridescenceThicknessMapTransform))),m.transmission>0&&(g.transmission.value=m.transmission,g.transmissionSamplerMap.value=v.texture,g.transmissionSamplerSize.value.set(v.width,v.height),m.transmissionMap&&(g.transmissionMap.value=m.transmissionMap,t(m.transmissionMap,g.transmissionMapTransform)),g.thickness.value=m.thickness,m.thicknessMap&&(g.thicknessMap.value=m.thicknessMap,t(m.thicknessMap,g.thicknessMapTransform)),g.attenuationDistance.value=m.attenuationDistance,g.attenuationColor.value.copy(m.attenuationColor)),m.anisotropy>0&&(g.anisotropyVector.value.set(m.anisotropy*Math.cos(m.anisotropyRotation),m.anisotropy*Math.sin(m.anisotropyRotation)),m.anisotropyMap&&(g.anisotropyMap.value=m.anisotropyMap,t(m.anisotropyMap,g.anisotropyMapTransform))),g.specularIntensity.value=m.specularIntensity,g.specularColor.value.copy(m.specularColor),m.specularColorMap&&(g.specularColorMap.value=m.specularColorMap,t(m.specularColorMap,g.specularColorMapTransform)),m.specularIntensityMap&&(g.specularIntensityMap.value=m.specularIntensityMap,t(m.specularIntensityMap,g.specularIntensityMapTransform))}function p(g,m){m.matcap&&(g.matcap.value=m.matcap)}function _(g,m){let v=e.get(m).light;g.referencePosition.value.setFromMatrixPosition(v.matrixWorld),g.nearDistance.value=v.shadow.camera.near,g.farDistance.value=v.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function hS(i,e,t,n){let s={},r={};function o(v,M){let b=M.program;n.uniformBlockBinding(v,b,s[v.id])}function a(v,M){let b=s[v.id];b===void 0&&(p(v),b=c(v),s[v.id]=b,v.addEventListener("dispose",g));let S=M.program;n.updateUBOMapping(v,S);let T=e.render.frame;r[v.id]!==T&&(l(v),r[v.id]=T)}function c(v){let M=i.createBuffer(),b=v.__size,S=v.usage;return i.bindBuffer(i.UNIFORM_BUFFER,M),i.bufferData(i.UNIFORM_BUFFER,b,S),i.bindBuffer(i.UNIFORM_BUFFER,null),M}function l(v){let M=s[v.id],b=v.uniforms,S=v.__cache;i.bindBuffer(i.UNIFORM_BUFFER,M);for(let T=0,y=b.length;T<y;T++){let w=b[T];if(Array.isArray(w))for(let F=0,I=w.length;F<I;F++)h(w[F],T,F,S);else h(w,T,0,S)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(v,M,b,S){if(u(v,M,b,S)===!0){let T=v.__offset,y=v.value;if(Array.isArray(y)){let w=0;for(let F=0;F<y.length;F++){let I=y[F],D=_(I,!0);d(I,v.__data,w),w+=D.storage/Float32Array.BYTES_PER_ELEMENT}}else d(y,v.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,T,v.__data)}}function d(v,M,b){typeof v=="number"||typeof v=="boolean"?M[b]=v:v.isMatrix3?(M[b]=v.elements[0],M[b+1]=v.elements[1],M[b+2]=v.elements[2],M[b+3]=0,M[b+4]=v.elements[3],M[b+5]=v.elements[4],M[b+6]=v.elements[5],M[b+7]=0,M[b+8]=v.elements[6],M[b+9]=v.elements[7],M[b+10]=v.elements[8],M[b+11]=0):ArrayBuffer.isView(v)?M.set(v.subarray(0,M.length-b),b):v.toArray(M,b)}function u(v,M,b,S){let T=v.value,y=M+"_"+b;if(Array.isArray(T)){S[y]===void 0&&(S[y]=[]);let w=S[y],F=!1;for(let I=0;I<T.length;I++)f(T[I],w,I)===!0&&(F=!0);return F}return f(T,S,y)}function f(v,M,b){if(M[b]===void 0)return typeof v=="number"||typeof v=="boolean"?M[b]=v:ArrayBuffer.isView(v)?M[b]=v.slice():M[b]=v.clone(),!0;{let S=M[b];if(typeof v=="number"||typeof v=="boolean"){if(S!==v)return M[b]=v,!0}else{if(ArrayBuffer.isView(v))return!0;if(S.equals(v)===!1)return S.copy(v),!0}}return!1}function p(v){let M=v.uniforms,b=0,S=16;for(let y=0,w=M.length;y<w;y++){let F=Array.isArray(M[y])?M[y]:[M[y]];for(let I=0,D=F.length;I<D;I++){let $=F[I],J=Array.isArray($.value)?$.value:[$.value],P=Array.isArray(M[y])||Array.isArray($.value),k=b;for(let Y=0,me=J.length;Y<me;Y++){let se=J[Y],ce=_(se,P),ue=b%S,Pe=ue%ce.boundary,ne=ue+Pe;b+=Pe,ne!==0&&S-ne<ce.storage&&(b+=S-ne),Y===0&&(k=b),b+=ce.storage}let re=$.type==="int"?Int32Array:$.type==="uint"?Uint32Array:Float32Array;$.__data=new re((b-k)/Float32Array.BYTES_PER_ELEMENT),$.__offset=k}}let T=b%S;return T>0&&(b+=S-T),v.__size=b,v.__cache={},this}function _(v,M){let b={boundary:0,storage:0};return typeof v=="number"||typeof v=="boolean"?(b.boundary=4,b.storage=4):v.isVector2?(b.boundary=8,b.storage=8):v.isVector3||v.isColor?(b.boundary=16,b.storage=12):v.isVector4?(b.boundary=16,b.storage=16):v.isMatrix3?(b.boundary=16,b.storage=48):v.isMatrix4?(b.boundary=16,b.storage=64):v.isTexture?We("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(v)?(b.boundary=16,b.storage=v.byteLength):We("WebGLRenderer: Unsupported uniform value type.",v),M===!0&&(b.boundary=16,b.storage=Math.ceil(b.storage/16)*16),b}function g(v){let M=v.target;M.removeEventListener("dispose",g),i.deleteBuffer(s[M.id]),delete s[M.id],delete r[M.id]}function m(){for(let v in s)i.deleteBuffer(s[v]);s={},r={}}return{bind:o,update:a,dispose:m}}var uS=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),pi=null;function dS(){return pi===null&&(pi=new wr(uS,16,16,as,si),pi.name="DFG_LUT",pi.minFilter=Vt,pi.magFilter=Vt,pi.wrapS=Hn,pi.wrapT=Hn,pi.generateMipmaps=!1,pi.needsUpdate=!0),pi}var Cc=class{constructor(e={}){let{canvas:t=fm(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:c=!0,preserveDrawingBuffer:l=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:d=!1,reversedDepthBuffer:u=!1,outputBufferType:f=Rn}=e;this.isWebGLRenderer=!0;let p;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");p=n.getContextAttributes().alpha}else p=o;let _=f,g=new Set([Yl,ql,Xl]),m=new Set([Rn,ii,Fr,ks,Vl,Wl]),v=new Uint32Array(4),M=new Int32Array(4),b={textures:[],min:[],max:[],resolution:[]},S=null,T=null,y=[],w=[],F=null;this.domElement=t,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Vn,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let I=this,D=!1,$=null,J=null,P=null,k=null;this._outputColorSpace=Ct;let re=0,Y=0,me=null,se=-1,ce=null,ue=new bt,Pe=new bt,ne=null,H=new Ge(0),le=0,we=t.width,Ue=t.height,Se=1,Oe=null,ct=null,Xe=new bt(0,0,we,Ue),B=new bt(0,0,we,Ue),ae=!1,G=new Qi,j=new _l,he=!1,ve=!1,de=new je,Fe=new L,Ce=new bt,Me={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},qe=!1;function at(){return me===null?Se:1}let U=n;function _t(E,O){return t.getContext(E,O)}let Qe,pt,Ee,Et,Ye,Ke,R,x,C,V,W,ie,fe,te,X,pe,A,Q,K,ye,ge,be,De;try{let E={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:c,preserveDrawingBuffer:l,powerPreference:h,failIfMajorPerformanceCaveat:d};if("setAttribute"in t&&t.setAttribute("data-engine",`three.js r${Bl}`),t.addEventListener("webglcontextlost",$e,!1),t.addEventListener("webglcontextrestored",st,!1),t.addEventListener("webglcontextcreationerror",Ie,!1),U===null){let O="webgl2";if(U=_t(O,E),U===null)throw _t(O)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Ze()}catch(E){throw t.removeEventListener("webglcontextlost",$e,!1),t.removeEventListener("webglcontextrestored",st,!1),t.removeEventListener("webglcontextcreationerror",Ie,!1),Je("WebGLRenderer: "+E.message),E}function Ze(){Qe=new Sb(U),Qe.init(),ge=new rS(U,Qe),pt=new db(U,Qe,e,ge),Ee=new iS(U,Qe),pt.reversedDepthBuffer&&u&&Ee.buffers.depth.setReversed(!0),J=U.createFramebuffer(),P=U.createFramebuffer(),k=U.createFramebuffer(),Et=new Eb(U),Ye=new VM,Ke=new sS(U,Qe,Ee,Ye,pt,ge,Et),R=new Mb(I),x=new Rx(U),be=new hb(U,x),C=new wb(U,x,Et,be),V=new Rb(U,C,x,be,Et),Q=new Ab(U,pt,Ke),X=new fb(Ye),W=new GM(I,R,Qe,pt,be,X),ie=new cS(I,Ye),fe=new $M,te=new ZM(Qe),A=new cb(I,R,Ee,V,p,c),pe=new nS(I,V,pt),De=new hS(U,Et,pt,Ee),K=new ub(U,Qe,Et),ye=new Tb(U,Qe,Et),Et.programs=W.programs,I.capabilities=pt,I.extensions=Qe,I.properties=Ye,I.renderLists=fe,I.shadowMap=pe,I.state=Ee,I.info=Et}_!==Rn&&(F=new Ib(_,t.width,t.height,a,s,r));let _e=new Zu(I,U);this.xr=_e,this.getContext=function(){return U},this.getContextAttributes=function(){return U.getContextAttributes()},this.forceContextLoss=function(){let E=Qe.get("WEBGL_lose_context");E&&E.loseContext()},this.forceContextRestore=function(){let E=Qe.get("WEBGL_lose_context");E&&E.restoreContext()},this.getPixelRatio=function(){return Se},this.setPixelRatio=function(E){E!==void 0&&(Se=E,this.setSize(we,Ue,!1))},this.getSize=function(E){return E.set(we,Ue)},this.setSize=function(E,O,oe=!0){if(_e.isPresenting){We("WebGLRenderer: Can't change size while VR device is presenting.");return}we=E,Ue=O,t.width=Math.floor(E*Se),t.height=Math.floor(O*Se),oe===!0&&(t.style.width=E+"px",t.style.height=O+"px"),F!==null&&F.setSize(t.width,t.height),this.setViewport(0,0,E,O)},this.getDrawingBufferSize=function(E){return E.set(we*Se,Ue*Se).floor()},this.setDrawingBufferSize=function(E,O,oe){we=E,Ue=O,Se=oe,t.width=Math.floor(E*oe),t.height=Math.floor(O*oe),this.setViewport(0,0,E,O)},this.setEffects=function(E){if(_===Rn){Je("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(E){for(let O=0;O<E.length;O++)if(E[O].isOutputPass===!0){We("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}F.setEffects(E||[])},this.getCurrentViewport=function(E){return E.copy(ue)},this.getViewport=function(E){return E.copy(Xe)},this.setViewport=function(E,O,oe,q){E.isVector4?Xe.set(E.x,E.y,E.z,E.w):Xe.set(E,O,oe,q),Ee.viewport(ue.copy(Xe).multiplyScalar(at()).round())},this.getScissor=function(E){return E.copy(B)},this.setScissor=function(E,O,oe,q){E.isVector4?B.set(E.x,E.y,E.z,E.w):B.set(E,O,oe,q),Ee.scissor(Pe.copy(B).multiplyScalar(at()).round())},this.getScissorTest=function(){return ae},this.setScissorTest=function(E){Ee.setScissorTest(ae=E)},this.setOpaqueSort=function(E){Oe=E},this.setTransparentSort=function(E){ct=E},this.getClearColor=function(E){return E.copy(A.getClearColor())},this.setClearColor=function(){A.setClearColor(...arguments)},this.getClearAlpha=function(){return A.getClearAlpha()},this.setClearAlpha=function(){A.setClearAlpha(...arguments)},this.clear=function(E=!0,O=!0,oe=!0){let q=0;if(E){let Z=!1;if(me!==null){let Re=me.texture.format;Z=g.has(Re)}if(Z){let Re=me.texture.type,Be=m.has(Re),Ae=A.getClearColor(),Ne=A.getClearAlpha(),Ve=Ae.r,nt=Ae.g,dt=Ae.b;Be?(v[0]=Ve,v[1]=nt,v[2]=dt,v[3]=Ne,U.clearBufferuiv(U.COLOR,0,v)):(M[0]=Ve,M[1]=nt,M[2]=dt,M[3]=Ne,U.clearBufferiv(U.COLOR,0,M))}else q|=U.COLOR_BUFFER_BIT}O&&(q|=U.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),oe&&(q|=U.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),q!==0&&U.clear(q)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(E){E.setRenderer(this),$=E},this.dispose=function(){t.removeEventListener("webglcontextlost",$e,!1),t.removeEventListener("webglcontextrestored",st,!1),t.removeEventListener("webglcontextcreationerror",Ie,!1),A.dispose(),fe.dispose(),te.dispose(),Ke.dispose(),Ye.dispose(),R.dispose(),V.dispose(),C.dispose(),be.dispose(),De.dispose(),W.dispose(),_e.dispose(),_e.removeEventListener("sessionstart",lf),_e.removeEventListener("sessionend",cf),ms.stop()};function $e(E){E.preventDefault(),xo("WebGLRenderer: Context Lost."),D=!0}function st(){xo("WebGLRenderer: Context Restored."),D=!1;let E=Et.autoReset,O=pe.enabled,oe=pe.autoUpdate,q=pe.needsUpdate,Z=pe.type;Ze(),Et.autoReset=E,pe.enabled=O,pe.autoUpdate=oe,pe.needsUpdate=q,pe.type=Z}function Ie(E){Je("WebGLRenderer: A WebGL context could not be created. Reason: ",E.statusMessage)}function gt(E){let O=E.target;O.removeEventListener("dispose",gt),Yt(O)}function Yt(E){Gi(E),Ye.remove(E)}function Gi(E){let O=Ye.get(E).programs;O!==void 0&&(O.forEach(function(oe){W.releaseProgram(oe)}),E.isShaderMaterial&&W.releaseShaderCache(E))}this.renderBufferDirect=function(E,O,oe,q,Z,Re){O===null&&(O=Me);let Be=Z.isMesh&&Z.matrixWorld.determinantAffine()<0,Ae=I0(E,O,oe,q,Z);Ee.setMaterial(q,Be);let Ne=oe.index,Ve=1;if(q.wireframe===!0){if(Ne=C.getWireframeAttribute(oe),Ne===void 0)return;Ve=2}let nt=oe.drawRange,dt=oe.attributes.position,ke=nt.start*Ve,ft=(nt.start+nt.count)*Ve;Re!==null&&(ke=Math.max(ke,Re.start*Ve),ft=Math.min(ft,(Re.start+Re.count)*Ve)),Ne!==null?(ke=Math.max(ke,0),ft=Math.min(ft,Ne.count)):dt!=null&&(ke=Math.max(ke,0),ft=Math.min(ft,dt.count));let Ot=ft-ke;if(Ot<0||Ot===1/0)return;be.setup(Z,q,Ae,oe,Ne);let wt,Mt=K;if(Ne!==null&&(wt=x.get(Ne),Mt=ye,Mt.setIndex(wt)),Z.isMesh)q.wireframe===!0?(Ee.setLineWidth(q.wireframeLinewidth*at()),Mt.setMode(U.LINES)):Mt.setMode(U.TRIANGLES);else if(Z.isLine){let sn=q.linewidth;sn===void 0&&(sn=1),Ee.setLineWidth(sn*at()),Z.isLineSegments?Mt.setMode(U.LINES):Z.isLineLoop?Mt.setMode(U.LINE_LOOP):Mt.setMode(U.LINE_STRIP)}else Z.isPoints?Mt.setMode(U.POINTS):Z.isSprite&&Mt.setMode(U.TRIANGLES);if(Z.isBatchedMesh)if(Qe.get("WEBGL_multi_draw"))Mt.renderMultiDraw(Z._multiDrawStarts,Z._multiDrawCounts,Z._multiDrawCount);else{let sn=Z._multiDrawStarts,ze=Z._multiDrawCounts,un=Z._multiDrawCount,xt=Ne?x.get(Ne).bytesPerElement:1,gs=Ye.get(q).currentProgram.getUniforms();for(let rn=0;rn<un;rn++)gs.setValue(U,"_gl_DrawID",rn),Mt.render(sn[rn]/xt,ze[rn])}else if(Z.isInstancedMesh)Mt.renderInstances(ke,Ot,Z.count);else if(oe.isInstancedBufferGeometry){let sn=oe._maxInstanceCount!==void 0?oe._maxInstanceCount:1/0,ze=Math.min(oe.instanceCount,sn);Mt.renderInstances(ke,Ot,ze)}else Mt.render(ke,Ot)};function af(E,O,oe,q){$!==null&&E.isNodeMaterial&&$.setObject(q,E),he===!0&&X.setState(E,oe,!1),E.transparent===!0&&E.side===nn&&E.forceSinglePass===!1?(E.side=yn,E.needsUpdate=!0,Zr(E,O,q),E.side=An,E.needsUpdate=!0,Zr(E,O,q),E.side=nn):Zr(E,O,q)}this.compile=function(E,O,oe=null){oe===null&&(oe=E),$!==null&&$.renderStart(E,O,oe),T=te.get(oe),T.init(O),w.push(T),oe.traverseVisible(function(Z){Z.isLight&&Z.layers.test(O.layers)&&(T.pushLight(Z),Z.castShadow&&T.pushShadow(Z))}),E!==oe&&E.traverseVisible(function(Z){Z.isLight&&Z.layers.test(O.layers)&&(T.pushLight(Z),Z.castShadow&&T.pushShadow(Z))}),T.setupLights(),$!==null&&$.updateLights(T.state.lightsArray),ve=this.localClippingEnabled,he=X.init(this.clippingPlanes,ve),he===!0&&X.setGlobalState(this.clippingPlanes,O),$!==null&&pe.render(T.state.shadowsArray,oe,O);let q=new Set;return E.traverse(function(Z){if(!(Z.isMesh||Z.isPoints||Z.isLine||Z.isSprite))return;let Re=Z.material;if(Re)if(Array.isArray(Re))for(let Be=0;Be<Re.length;Be++){let Ae=Re[Be];af(Ae,oe,O,Z),q.add(Ae)}else af(Re,oe,O,Z),q.add(Re)}),T=w.pop(),$!==null&&$.renderEnd(),q},this.compileAsync=function(E,O,oe=null){let q=this.compile(E,O,oe);return new Promise(Z=>{function Re(){if(q.forEach(function(Be){let Ne=Ye.get(Be).currentProgram;(Ne===void 0||Ne.isReady())&&q.delete(Be)}),q.size===0){Z(E);return}setTimeout(Re,10)}Qe.get("KHR_parallel_shader_compile")!==null?Re():setTimeout(Re,10)})};let Jc=null;function R0(E){Jc&&Jc(E)}function lf(){ms.stop()}function cf(){ms.start()}let ms=new Xm;ms.setAnimationLoop(R0),typeof self<"u"&&ms.setContext(self),this.setAnimationLoop=function(E){Jc=E,_e.setAnimationLoop(E),E===null?ms.stop():ms.start()},_e.addEventListener("sessionstart",lf),_e.addEventListener("sessionend",cf),this.render=function(E,O){if(O!==void 0&&O.isCamera!==!0){Je("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(D===!0)return;$!==null&&$.renderStart(E,O);let oe=_e.enabled===!0&&_e.isPresenting===!0,q=F!==null&&(me===null||oe)&&F.begin(I,me);if(E.matrixWorldAutoUpdate===!0&&E.updateMatrixWorld(),O.parent===null&&O.matrixWorldAutoUpdate===!0&&O.updateMatrixWorld(),_e.enabled===!0&&_e.isPresenting===!0&&(F===null||F.isCompositing()===!1)&&(_e.cameraAutoUpdate===!0&&_e.updateCamera(O),O=_e.getCamera()),E.isScene===!0&&E.onBeforeRender(I,E,O,me),T=te.get(E,w.length),T.init(O),T.state.textureUnits=Ke.getTextureUnits(),w.push(T),de.multiplyMatrices(O.projectionMatrix,O.matrixWorldInverse),O.isArrayCamera?j.setFromArrayCamera(O):G.setFromProjectionMatrix(de,Gn,O.reversedDepth),ve=this.localClippingEnabled,he=X.init(this.clippingPlanes,ve),S=fe.get(E,y.length),S.init(),y.push(S),this.info.render.frame++,_e.enabled===!0&&_e.isPresenting===!0){let Be=I.xr.getDepthSensingMesh();Be!==null&&Qc(Be,O,-1/0,I.sortObjects)}Qc(E,O,0,I.sortObjects),S.finish(),$!==null&&$.updateLights(T.state.lightsArray),I.sortObjects===!0&&S.sort(Oe,ct),qe=_e.enabled===!1||_e.isPresenting===!1||_e.hasDepthSensing()===!1,qe&&A.addToRenderList(S,E),this.info.autoReset===!0&&this.info.reset(),he===!0&&X.beginShadows();let Z=T.state.shadowsArray;if(pe.render(Z,E,O),he===!0&&X.endShadows(),(q&&F.hasRenderPass())===!1){let Be=S.opaque,Ae=S.transmissive;if(T.setupLights(),O.isArrayCamera){let Ne=O.cameras;if(Ae.length>0)for(let Ve=0,nt=Ne.length;Ve<nt;Ve++){let dt=Ne[Ve];uf(Be,Ae,E,dt)}qe&&A.render(E);for(let Ve=0,nt=Ne.length;Ve<nt;Ve++){let dt=Ne[Ve];hf(S,E,dt,dt.viewport)}}else Ae.length>0&&uf(Be,Ae,E,O),qe&&A.render(E),hf(S,E,O)}me!==null&&Y===0&&(Ke.updateMultisampleRenderTarget(me),Ke.updateRenderTargetMipmap(me)),q&&F.end(I),E.isScene===!0&&E.onAfterRender(I,E,O),be.resetDefaultState(),se=-1,ce=null,w.pop(),w.length>0?(T=w[w.length-1],Ke.setTextureUnits(T.state.textureUnits),he===!0&&X.setGlobalState(I.clippingPlanes,T.state.camera)):T=null,y.pop(),y.length>0?S=y[y.length-1]:S=null,$!==null&&$.renderEnd()};function Qc(E,O,oe,q){if(E.visible===!1)return;if(E.layers.test(O.layers)){if(E.isGroup)oe=E.renderOrder;else if(E.isLOD)E.autoUpdate===!0&&E.update(O);else if(E.isLight)T.pushLight(E),E.castShadow&&T.pushShadow(E);else if(E.isSprite){let Be=O.isArrayCamera?j:G;if(!E.frustumCulled||E.intersectsFrustum(Be)){q&&Ce.setFromMatrixPosition(E.matrixWorld).applyMatrix4(de);let Ae=V.update(E),Ne=E.material;Ne.visible&&S.push(E,Ae,Ne,oe,Ce.z,null,O)}}else if(E.isMesh||E.isLine||E.isPoints){let Be=O.isArrayCamera?j:G;if(!E.frustumCulled||E.intersectsFrustum(Be)){let Ae=V.update(E),Ne=E.material;if(q&&(E.boundingSphere!==void 0?(E.boundingSphere===null&&E.computeBoundingSphere(),Ce.copy(E.boundingSphere.center)):(Ae.boundingSphere===null&&Ae.computeBoundingSphere(),Ce.copy(Ae.boundingSphere.center)),Ce.applyMatrix4(E.matrixWorld).applyMatrix4(de)),Array.isArray(Ne)){let Ve=Ae.groups;for(let nt=0,dt=Ve.length;nt<dt;nt++){let ke=Ve[nt],ft=Ne[ke.materialIndex];ft&&ft.visible&&S.push(E,Ae,ft,oe,Ce.z,ke,O)}}else Ne.visible&&S.push(E,Ae,Ne,oe,Ce.z,null,O)}}}let Re=E.children;for(let Be=0,Ae=Re.length;Be<Ae;Be++)Qc(Re[Be],O,oe,q)}function hf(E,O,oe,q){let{opaque:Z,transmissive:Re,transparent:Be}=E;T.setupLightsView(oe),he===!0&&X.setGlobalState(I.clippingPlanes,oe),q&&Ee.viewport(ue.copy(q)),Z.length>0&&Ma(Z,O,oe),Re.length>0&&Ma(Re,O,oe),Be.length>0&&Ma(Be,O,oe),Ee.buffers.depth.setTest(!0),Ee.buffers.depth.setMask(!0),Ee.buffers.color.setMask(!0),Ee.setPolygonOffset(!1)}function uf(E,O,oe,q){if((oe.isScene===!0?oe.overrideMaterial:null)!==null)return;if(T.state.transmissionRenderTarget[q.id]===void 0){let ke=Qe.has("EXT_color_buffer_half_float")||Qe.has("EXT_color_buffer_float");T.state.transmissionRenderTarget[q.id]=new Un(1,1,{generateMipmaps:!0,type:ke?si:Rn,minFilter:Wn,samples:Math.max(4,pt.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:ht.workingColorSpace})}let Re=T.state.transmissionRenderTarget[q.id],Be=q.viewport||ue;Re.setSize(Be.z*I.transmissionResolutionScale,Be.w*I.transmissionResolutionScale);let Ae=I.getRenderTarget(),Ne=I.getActiveCubeFace(),Ve=I.getActiveMipmapLevel();I.setRenderTarget(Re),I.getClearColor(H),le=I.getClearAlpha(),le<1&&I.setClearColor(16777215,.5),I.clear(),qe&&A.render(oe);let nt=I.toneMapping;I.toneMapping=Vn;let dt=q.viewport;if(q.viewport!==void 0&&(q.viewport=void 0),T.setupLightsView(q),he===!0&&X.setGlobalState(I.clippingPlanes,q),Ma(E,oe,q),Ke.updateMultisampleRenderTarget(Re),Ke.updateRenderTargetMipmap(Re),Qe.has("WEBGL_multisampled_render_to_texture")===!1){let ke=!1;for(let ft=0,Ot=O.length;ft<Ot;ft++){let wt=O[ft],{object:Mt,geometry:sn,material:ze,group:un}=wt;if(ze.side===nn&&Mt.layers.test(q.layers)){let xt=ze.side;ze.side=yn,ze.needsUpdate=!0,df(Mt,oe,q,sn,ze,un),ze.side=xt,ze.needsUpdate=!0,ke=!0}}ke===!0&&(Ke.updateMultisampleRenderTarget(Re),Ke.updateRenderTargetMipmap(Re))}I.setRenderTarget(Ae,Ne,Ve),I.setClearColor(H,le),dt!==void 0&&(q.viewport=dt),I.toneMapping=nt}function Ma(E,O,oe){let q=O.isScene===!0?O.overrideMaterial:null;for(let Z=0,Re=E.length;Z<Re;Z++){let Be=E[Z],{object:Ae,geometry:Ne,group:Ve}=Be,nt=Be.material;nt.allowOverride===!0&&q!==null&&(nt=q),Ae.layers.test(oe.layers)&&df(Ae,O,oe,Ne,nt,Ve)}}function df(E,O,oe,q,Z,Re){$!==null&&Z.isNodeMaterial&&$.setObject(E,Z),E.onBeforeRender(I,O,oe,q,Z,Re),E.modelViewMatrix.multiplyMatrices(oe.matrixWorldInverse,E.matrixWorld),E.normalMatrix.getNormalMatrix(E.modelViewMatrix),Z.onBeforeRender(I,O,oe,q,E,Re),Z.transparent===!0&&Z.side===nn&&Z.forceSinglePass===!1?(Z.side=yn,Z.needsUpdate=!0,I.renderBufferDirect(oe,O,q,Z,E,Re),Z.side=An,Z.needsUpdate=!0,I.renderBufferDirect(oe,O,q,Z,E,Re),Z.side=nn):I.renderBufferDirect(oe,O,q,Z,E,Re),E.onAfterRender(I,O,oe,q,Z,Re)}function ff(E){let O=0;for(let oe of E)oe.texture!==null&&O++;return O}function Zr(E,O,oe){O.isScene!==!0&&(O=Me);let q=Ye.get(E),Z=T.state.lights,Re=T.state.shadowsArray,Be=Z.state.version,Ae=W.getParameters(E,Z.state,Re,O,oe,T.state.lightProbeGridArray),Ne=W.getProgramCacheKey(Ae),Ve=q.programs;q.environment=E.isMeshStandardMaterial||E.isMeshLambertMaterial||E.isMeshPhongMaterial?O.environment:null,q.fog=O.fog;let nt=E.isMeshStandardMaterial||E.isMeshLambertMaterial&&!E.envMap||E.isMeshPhongMaterial&&!E.envMap;q.envMap=R.get(E.envMap||q.environment,nt),q.envMapRotation=q.environment!==null&&E.envMap===null?O.environmentRotation:E.envMapRotation,Ve===void 0&&(E.addEventListener("dispose",gt),Ve=new Map,q.programs=Ve,q.programVariants=new Map);let dt=Ve.get(Ne);if(dt!==void 0){if(q.currentProgram===dt&&q.lightsStateVersion===Be)return mf(E,Ae),dt}else Ae.uniforms=W.getUniforms(E),$!==null&&E.isNodeMaterial&&$.build(E,oe,Ae),E.onBeforeCompile(Ae,I),dt=W.acquireProgram(Ae,Ne),Ve.set(Ne,dt),q.uniforms=Ae.uniforms;let ke=q.uniforms;return(!E.isShaderMaterial&&!E.isRawShaderMaterial||E.clipping===!0)&&(ke.clippingPlanes=X.uniform),mf(E,Ae),q.needsLights=L0(E),q.lightsStateVersion=Be,q.needsLights&&(ke.ambientLightColor.value=Z.state.ambient,ke.lightProbe.value=Z.state.probe,ke.sunLights.value=Z.state.sun,ke.sunLightShadows.value=Z.state.sunShadow,ke.directionalLights.value=Z.state.directional,ke.directionalLightShadows.value=Z.state.directionalShadow,ke.spotLights.value=Z.state.spot,ke.spotLightShadows.value=Z.state.spotShadow,ke.rectAreaLights.value=Z.state.rectArea,ke.ltc_1.value=Z.state.rectAreaLTC1,ke.ltc_2.value=Z.state.rectAreaLTC2,ke.pointLights.value=Z.state.point,ke.pointLightShadows.value=Z.state.pointShadow,ke.hemisphereLights.value=Z.state.hemi,ke.sunShadowMatrix.value=Z.state.sunShadowMatrix,ke.sunShadowCascade.value=Z.state.sunShadowCascade,ke.directionalShadowMatrix.value=Z.state.directionalShadowMatrix,ke.spotLightMatrix.value=Z.state.spotLightMatrix,ke.spotLightMap.value=Z.state.spotLightMap,ke.pointShadowMatrix.value=Z.state.pointShadowMatrix),q.numLightProbeGrids=ff(T.state.lightProbeGridArray),q.currentProgram=dt,q.uniformsList=null,dt}function C0(E,O,oe,q,Z){let Re=Ye.get(E),Be=Re.currentProgram.id+","+q+","+Z,Ae=Re.programVariants.get(Be);return Ae===void 0?(Ae=Zr(E,O,oe),Re.programVariants.set(Be,Ae)):(Re.currentProgram=Ae,Re.uniformsList=null,Re.outputColorSpace=q,Re.toneMapping=Z),Ae}function pf(E){if(E.uniformsList===null){let O=E.currentProgram.getUniforms();E.uniformsList=zr.seqWithValue(O.seq,E.uniforms)}return E.uniformsList}function mf(E,O){let oe=Ye.get(E);oe.outputColorSpace=O.outputColorSpace,oe.batching=O.batching,oe.batchingColor=O.batchingColor,oe.instancing=O.instancing,oe.instancingColor=O.instancingColor,oe.instancingMorph=O.instancingMorph,oe.skinning=O.skinning,oe.morphTargets=O.morphTargets,oe.morphNormals=O.morphNormals,oe.morphColors=O.morphColors,oe.morphTargetsCount=O.morphTargetsCount,oe.numClippingPlanes=O.numClippingPlanes,oe.numIntersection=O.numClipIntersection,oe.vertexAlphas=O.vertexAlphas,oe.vertexTangents=O.vertexTangents,oe.toneMapping=O.toneMapping}function I0(E,O,oe,q,Z){O.isScene!==!0&&(O=Me),Ke.resetTextureUnits();let Re=O.fog,Be=q.isMeshStandardMaterial||q.isMeshLambertMaterial||q.isMeshPhongMaterial?O.environment:null,Ae=me===null?I.outputColorSpace:me.isXRRenderTarget===!0?me.texture.colorSpace:ht.workingColorSpace,Ne=q.isMeshStandardMaterial||q.isMeshLambertMaterial&&!q.envMap||q.isMeshPhongMaterial&&!q.envMap,Ve=R.get(q.envMap||Be,Ne),nt=q.vertexColors===!0&&!!oe.attributes.color&&oe.attributes.color.itemSize===4,dt=!!oe.attributes.tangent&&(!!q.normalMap||q.anisotropy>0),ke=!!oe.morphAttributes.position,ft=!!oe.morphAttributes.normal,Ot=!!oe.morphAttributes.color,wt=Vn;q.toneMapped&&(me===null||me.isXRRenderTarget===!0)&&(wt=I.toneMapping);let Mt=oe.morphAttributes.position||oe.morphAttributes.normal||oe.morphAttributes.color,sn=Mt!==void 0?Mt.length:0,ze=Ye.get(q),un=T.state.lights;if(he===!0&&(ve===!0||E!==ce)){let Rt=E===ce&&q.id===se;X.setState(q,E,Rt)}let xt=!1,gs=!1;q.version===ze.__version?ze.needsLights&&ze.lightsStateVersion!==un.state.version||Z.isBatchedMesh&&ze.batching===!1||!Z.isBatchedMesh&&ze.batching===!0||Z.isBatchedMesh&&ze.batchingColor===!0&&Z._colorsTexture===null||Z.isBatchedMesh&&ze.batchingColor===!1&&Z._colorsTexture!==null||Z.isInstancedMesh&&ze.instancing===!1||!Z.isInstancedMesh&&ze.instancing===!0||Z.isSkinnedMesh&&ze.skinning===!1||!Z.isSkinnedMesh&&ze.skinning===!0||Z.isInstancedMesh&&ze.instancingColor===!0&&Z.instanceColor===null||Z.isInstancedMesh&&ze.instancingColor===!1&&Z.instanceColor!==null||Z.isInstancedMesh&&ze.instancingMorph===!0&&Z.morphTexture===null||Z.isInstancedMesh&&ze.instancingMorph===!1&&Z.morphTexture!==null||ze.envMap!==Ve||q.fog===!0&&ze.fog!==Re||ze.numClippingPlanes!==void 0&&(ze.numClippingPlanes!==X.numPlanes||ze.numIntersection!==X.numIntersection)||ze.vertexAlphas!==nt||ze.vertexTangents!==dt||ze.morphTargets!==ke||ze.morphNormals!==ft||ze.morphColors!==Ot||ze.morphTargetsCount!==sn||ze.numLightProbeGrids!==ff(T.state.lightProbeGridArray)?xt=!0:(ze.outputColorSpace!==Ae||ze.toneMapping!==wt)&&(gs=!0):(xt=!0,ze.__version=q.version);let rn=ze.currentProgram;(xt===!0||gs===!0)&&(rn=gs===!0?C0(q,O,Z,Ae,wt):Zr(q,O,Z),$&&q.isNodeMaterial&&$.onUpdateProgram(q,rn,ze));let Sa=!1,Vi=!1,_s=!1,mt=rn.getUniforms(),Jt=ze.uniforms;if(Ee.useProgram(rn.program)&&(Sa=!0,Vi=!0,_s=!0),q.id!==se&&(se=q.id,Vi=!0),Sa||ce!==E){Ee.buffers.depth.getReversed()&&E.reversedDepth!==!0&&(E._reversedDepth=!0,E.updateProjectionMatrix()),mt.setValue(U,"projectionMatrix",E.projectionMatrix),mt.setValue(U,"viewMatrix",E.matrixWorldInverse);let jt=mt.map.cameraPosition;jt!==void 0&&jt.setValue(U,Fe.setFromMatrixPosition(E.matrixWorld)),pt.logarithmicDepthBuffer&&mt.setValue(U,"logDepthBufFC",2/(Math.log(E.far+1)/Math.LN2)),(q.isMeshPhongMaterial||q.isMeshToonMaterial||q.isMeshLambertMaterial||q.isMeshBasicMaterial||q.isMeshStandardMaterial||q.isShaderMaterial)&&mt.setValue(U,"isOrthographic",E.isOrthographicCamera===!0),ce!==E&&(ce=E,Vi=!0,_s=!0)}if(ze.needsLights&&(un.state.sunShadowMap.length>0&&mt.setValue(U,"sunShadowMap",un.state.sunShadowMap,Ke),un.state.directionalShadowMap.length>0&&mt.setValue(U,"directionalShadowMap",un.state.directionalShadowMap,Ke),un.state.spotShadowMap.length>0&&mt.setValue(U,"spotShadowMap",un.state.spotShadowMap,Ke),un.state.pointShadowMap.length>0&&mt.setValue(U,"pointShadowMap",un.state.pointShadowMap,Ke)),Z.isSkinnedMesh){mt.setOptional(U,Z,"bindMatrix"),mt.setOptional(U,Z,"bindMatrixInverse");let Rt=Z.skeleton;Rt&&(Rt.boneTexture===null&&Rt.computeBoneTexture(),mt.setValue(U,"boneTexture",Rt.boneTexture,Ke))}Z.isBatchedMesh&&(mt.setOptional(U,Z,"batchingTexture"),mt.setValue(U,"batchingTexture",Z._matricesTexture,Ke),mt.setOptional(U,Z,"batchingIdTexture"),mt.setValue(U,"batchingIdTexture",Z._indirectTexture,Ke),mt.setOptional(U,Z,"batchingColorTexture"),Z._colorsTexture!==null&&mt.setValue(U,"batchingColorTexture",Z._colorsTexture,Ke));let jn=oe.morphAttributes;if((jn.position!==void 0||jn.normal!==void 0||jn.color!==void 0)&&Q.update(Z,oe,rn),(Vi||ze.receiveShadow!==Z.receiveShadow)&&(ze.receiveShadow=Z.receiveShadow,mt.setValue(U,"receiveShadow",Z.receiveShadow)),(q.isMeshStandardMaterial||q.isMeshLambertMaterial||q.isMeshPhongMaterial)&&q.envMap===null&&O.environment!==null&&(Jt.envMapIntensity.value=O.environmentIntensity),Jt.dfgLUT!==void 0&&(Jt.dfgLUT.value=dS()),Vi){if(mt.setValue(U,"toneMappingExposure",I.toneMappingExposure),ze.needsLights&&P0(Jt,_s),Re&&q.fog===!0&&ie.refreshFogUniforms(Jt,Re),ie.refreshMaterialUniforms(Jt,q,Se,Ue,T.state.transmissionRenderTarget[E.id]),ze.needsLights&&ze.numLightProbeGrids>0){let Rt=b,jt=0;for(let yi of T.state.lightProbeGridArray)yi.texture!==null&&(Rt.textures[jt]=yi.texture,Rt.min[jt]=yi.boundingBox.min,Rt.max[jt]=yi.boundingBox.max,Rt.resolution[jt]=yi.resolution,jt++);for(let yi in Rt)Rt[yi].length=jt;Jt.probesSH.value=Rt.textures,Jt.probesMin.value=Rt.min,Jt.probesMax.value=Rt.max,Jt.probesResolution.value=Rt.resolution}zr.upload(U,pf(ze),Jt,Ke)}if(q.isShaderMaterial&&q.uniformsNeedUpdate===!0&&(zr.upload(U,pf(ze),Jt,Ke),q.uniformsNeedUpdate=!1),q.isSpriteMaterial&&mt.setValue(U,"center",Z.center),mt.setValue(U,"modelViewMatrix",Z.modelViewMatrix),mt.setValue(U,"normalMatrix",Z.normalMatrix),mt.setValue(U,"modelMatrix",Z.matrixWorld),q.uniformsGroups!==void 0){let Rt=q.uniformsGroups;for(let jt=0,yi=Rt.length;jt<yi;jt++){let _f=Rt[jt];De.update(_f,rn),De.bind(_f,rn)}}return rn}function P0(E,O){E.ambientLightColor.needsUpdate=O,E.lightProbe.needsUpdate=O,E.sunLights.needsUpdate=O,E.sunLightShadows.needsUpdate=O,E.directionalLights.needsUpdate=O,E.directionalLightShadows.needsUpdate=O,E.pointLights.needsUpdate=O,E.pointLightShadows.needsUpdate=O,E.spotLights.needsUpdate=O,E.spotLightShadows.needsUpdate=O,E.rectAreaLights.needsUpdate=O,E.hemisphereLights.needsUpdate=O}function L0(E){return E.isMeshLambertMaterial||E.isMeshToonMaterial||E.isMeshPhongMaterial||E.isMeshStandardMaterial||E.isShadowMaterial||E.isShaderMaterial&&E.lights===!0}this.getActiveCubeFace=function(){return re},this.getActiveMipmapLevel=function(){return Y},this.getRenderTarget=function(){return me},this.setRenderTargetTextures=function(E,O,oe){let q=Ye.get(E);q.__autoAllocateDepthBuffer=E.resolveDepthBuffer===!1,q.__autoAllocateDepthBuffer===!1&&(q.__useRenderToTexture=!1),Ye.get(E.texture).__webglTexture=O,Ye.get(E.depthTexture).__webglTexture=q.__autoAllocateDepthBuffer?void 0:oe,q.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(E,O){let oe=Ye.get(E);oe.__webglFramebuffer=O,oe.__useDefaultFramebuffer=O===void 0},this.setRenderTarget=function(E,O=0,oe=0){me=E,re=O,Y=oe;let q=null,Z=!1,Re=!1;if(E){let Ae=Ye.get(E);if(Ae.__useDefaultFramebuffer!==void 0){Ee.bindFramebuffer(U.FRAMEBUFFER,Ae.__webglFramebuffer),ue.copy(E.viewport),Pe.copy(E.scissor),ne=E.scissorTest,Ee.viewport(ue),Ee.scissor(Pe),Ee.setScissorTest(ne),se=-1;return}else if(Ae.__webglFramebuffer===void 0)Ke.setupRenderTarget(E);else if(Ae.__hasExternalTextures)Ke.rebindTextures(E,Ye.get(E.texture).__webglTexture,Ye.get(E.depthTexture).__webglTexture);else if(E.depthBuffer){let nt=E.depthTexture;if(Ae.__boundDepthTexture!==nt){if(nt!==null&&Ye.has(nt)&&(E.width!==nt.image.width||E.height!==nt.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Ke.setupDepthRenderbuffer(E)}}let Ne=E.texture;(Ne.isData3DTexture||Ne.isDataArrayTexture||Ne.isCompressedArrayTexture)&&(Re=!0);let Ve=Ye.get(E).__webglFramebuffer;E.isWebGLCubeRenderTarget?(Array.isArray(Ve[O])?q=Ve[O][oe]:q=Ve[O],Z=!0):E.samples>0&&Ke.useMultisampledRTT(E)===!1?q=Ye.get(E).__webglMultisampledFramebuffer:Array.isArray(Ve)?q=Ve[oe]:q=Ve,ue.copy(E.viewport),Pe.copy(E.scissor),ne=E.scissorTest}else ue.copy(Xe).multiplyScalar(Se).floor(),Pe.copy(B).multiplyScalar(Se).floor(),ne=ae;if(oe!==0&&(q=J),Ee.bindFramebuffer(U.FRAMEBUFFER,q)&&Ee.drawBuffers(E,q),Ee.viewport(ue),Ee.scissor(Pe),Ee.setScissorTest(ne),Z){let Ae=Ye.get(E.texture);U.framebufferTexture2D(U.FRAMEBUFFER,U.COLOR_ATTACHMENT0,U.TEXTURE_CUBE_MAP_POSITIVE_X+O,Ae.__webglTexture,oe)}else if(Re){let Ae=O;for(let Ne=0;Ne<E.textures.length;Ne++){let Ve=Ye.get(E.textures[Ne]);U.framebufferTextureLayer(U.FRAMEBUFFER,U.COLOR_ATTACHMENT0+Ne,Ve.__webglTexture,oe,Ae)}}else if(E!==null&&oe!==0){let Ae=Ye.get(E.texture);U.framebufferTexture2D(U.FRAMEBUFFER,U.COLOR_ATTACHMENT0,U.TEXTURE_2D,Ae.__webglTexture,oe)}se=-1};function gf(E){let O=Ye.get(E);return(O.__readFormat!==E.format||O.__readType!==E.type)&&(O.__readFormat=E.format,O.__readType=E.type,O.__formatReadable=pt.textureFormatReadable(E.format),O.__typeReadable=pt.textureTypeReadable(E.type)),O}this.readRenderTargetPixels=function(E,O,oe,q,Z,Re,Be,Ae=0){if(!(E&&E.isWebGLRenderTarget)){Je("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let Ne=Ye.get(E).__webglFramebuffer;if(E.isWebGLCubeRenderTarget&&Be!==void 0&&(Ne=Ne[Be],Array.isArray(Ne)&&(Ne=Ne[0])),Ne){Ee.bindFramebuffer(U.FRAMEBUFFER,Ne);try{let Ve=E.textures[Ae],nt=Ve.format,dt=Ve.type;E.textures.length>1&&U.readBuffer(U.COLOR_ATTACHMENT0+Ae);let ke=gf(Ve);if(ke.__formatReadable===!1){Je("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(ke.__typeReadable===!1){Je("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}O>=0&&O<=E.width-q&&oe>=0&&oe<=E.height-Z&&U.readPixels(O,oe,q,Z,ge.convert(nt),ge.convert(dt),Re)}finally{let Ve=me!==null?Ye.get(me).__webglFramebuffer:null;Ee.bindFramebuffer(U.FRAMEBUFFER,Ve)}}},this.readRenderTargetPixelsAsync=async function(E,O,oe,q,Z,Re,Be,Ae=0){if(!(E&&E.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let Ne=Ye.get(E).__webglFramebuffer;if(E.isWebGLCubeRenderTarget&&Be!==void 0&&(Ne=Ne[Be],Array.isArray(Ne)&&(Ne=Ne[0])),Ne)if(O>=0&&O<=E.width-q&&oe>=0&&oe<=E.height-Z){Ee.bindFramebuffer(U.FRAMEBUFFER,Ne);let Ve=E.textures[Ae],nt=Ve.format,dt=Ve.type;E.textures.length>1&&U.readBuffer(U.COLOR_ATTACHMENT0+Ae);let ke=gf(Ve);if(ke.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(ke.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let ft=U.createBuffer();U.bindBuffer(U.PIXEL_PACK_BUFFER,ft),U.bufferData(U.PIXEL_PACK_BUFFER,Re.byteLength,U.STREAM_READ),U.readPixels(O,oe,q,Z,ge.convert(nt),ge.convert(dt),0),U.bindBuffer(U.PIXEL_PACK_BUFFER,null);let Ot=me!==null?Ye.get(me).__webglFramebuffer:null;Ee.bindFramebuffer(U.FRAMEBUFFER,Ot);let wt=U.fenceSync(U.SYNC_GPU_COMMANDS_COMPLETE,0);return U.flush(),await mm(U,wt,4),U.bindBuffer(U.PIXEL_PACK_BUFFER,ft),U.getBufferSubData(U.PIXEL_PACK_BUFFER,0,Re),U.bindBuffer(U.PIXEL_PACK_BUFFER,null),U.deleteBuffer(ft),U.deleteSync(wt),Re}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(E,O=null,oe=0){let q=Math.pow(2,-oe),Z=Math.floor(E.image.width*q),Re=Math.floor(E.image.height*q),Be=O!==null?O.x:0,Ae=O!==null?O.y:0;Ke.setTexture2D(E,0),U.copyTexSubImage2D(U.TEXTURE_2D,oe,0,0,Be,Ae,Z,Re),Ee.unbindTexture()},this.copyTextureToTexture=function(E,O,oe=null,q=null,Z=0,Re=0){let Be,Ae,Ne,Ve,nt,dt,ke,ft,Ot,wt=E.isCompressedTexture?E.mipmaps[Re]:E.image;if(oe!==null)Be=oe.max.x-oe.min.x,Ae=oe.max.y-oe.min.y,Ne=oe.isBox3?oe.max.z-oe.min.z:1,Ve=oe.min.x,nt=oe.min.y,dt=oe.isBox3?oe.min.z:0;else{let mt=Math.pow(2,-Z);Be=Math.floor(wt.width*mt),Ae=Math.floor(wt.height*mt),E.isDataArrayTexture?Ne=wt.depth:E.isData3DTexture?Ne=Math.floor(wt.depth*mt):Ne=1,Ve=0,nt=0,dt=0}q!==null?(ke=q.x,ft=q.y,Ot=q.z):(ke=0,ft=0,Ot=0);let Mt=ge.convert(O.format),sn=ge.convert(O.type),ze;O.isData3DTexture?(Ke.setTexture3D(O,0),ze=U.TEXTURE_3D):O.isDataArrayTexture||O.isCompressedArrayTexture?(Ke.setTexture2DArray(O,0),ze=U.TEXTURE_2D_ARRAY):(Ke.setTexture2D(O,0),ze=U.TEXTURE_2D),Ee.activeTexture(U.TEXTURE0),Ee.pixelStorei(U.UNPACK_FLIP_Y_WEBGL,O.flipY),Ee.pixelStorei(U.UNPACK_PREMULTIPLY_ALPHA_WEBGL,O.premultiplyAlpha),Ee.pixelStorei(U.UNPACK_ALIGNMENT,O.unpackAlignment);let un=Ee.getParameter(U.UNPACK_ROW_LENGTH),xt=Ee.getParameter(U.UNPACK_IMAGE_HEIGHT),gs=Ee.getParameter(U.UNPACK_SKIP_PIXELS),rn=Ee.getParameter(U.UNPACK_SKIP_ROWS),Sa=Ee.getParameter(U.UNPACK_SKIP_IMAGES);Ee.pixelStorei(U.UNPACK_ROW_LENGTH,wt.width),Ee.pixelStorei(U.UNPACK_IMAGE_HEIGHT,wt.height),Ee.pixelStorei(U.UNPACK_SKIP_PIXELS,Ve),Ee.pixelStorei(U.UNPACK_SKIP_ROWS,nt),Ee.pixelStorei(U.UNPACK_SKIP_IMAGES,dt);let Vi=E.isDataArrayTexture||E.isData3DTexture,_s=O.isDataArrayTexture||O.isData3DTexture;if(E.isDepthTexture){let mt=Ye.get(E),Jt=Ye.get(O),jn=Ye.get(mt.__renderTarget),Rt=Ye.get(Jt.__renderTarget);Ee.bindFramebuffer(U.READ_FRAMEBUFFER,jn.__webglFramebuffer),Ee.bindFramebuffer(U.DRAW_FRAMEBUFFER,Rt.__webglFramebuffer);for(let jt=0;jt<Ne;jt++)Vi&&(U.framebufferTextureLayer(U.READ_FRAMEBUFFER,U.COLOR_ATTACHMENT0,Ye.get(E).__webglTexture,Z,dt+jt),U.framebufferTextureLayer(U.DRAW_FRAMEBUFFER,U.COLOR_ATTACHMENT0,Ye.get(O).__webglTexture,Re,Ot+jt)),U.blitFramebuffer(Ve,nt,Ve+Be,nt+Ae,ke,ft,ke+Be,ft+Ae,U.DEPTH_BUFFER_BIT,U.NEAREST);Ee.bindFramebuffer(U.READ_FRAMEBUFFER,null),Ee.bindFramebuffer(U.DRAW_FRAMEBUFFER,null)}else if(Z!==0||E.isRenderTargetTexture||Ye.has(E)){let mt=Ye.get(E),Jt=Ye.get(O);Ee.bindFramebuffer(U.READ_FRAMEBUFFER,P),Ee.bindFramebuffer(U.DRAW_FRAMEBUFFER,k);for(let jn=0;jn<Ne;jn++)Vi?U.framebufferTextureLayer(U.READ_FRAMEBUFFER,U.COLOR_ATTACHMENT0,mt.__webglTexture,Z,dt+jn):U.framebufferTexture2D(U.READ_FRAMEBUFFER,U.COLOR_ATTACHMENT0,U.TEXTURE_2D,mt.__webglTexture,Z),_s?U.framebufferTextureLayer(U.DRAW_FRAMEBUFFER,U.COLOR_ATTACHMENT0,Jt.__webglTexture,Re,Ot+jn):U.framebufferTexture2D(U.DRAW_FRAMEBUFFER,U.COLOR_ATTACHMENT0,U.TEXTURE_2D,Jt.__webglTexture,Re),Z!==0?U.blitFramebuffer(Ve,nt,Ve+Be,nt+Ae,ke,ft,ke+Be,ft+Ae,U.COLOR_BUFFER_BIT,U.NEAREST):_s?U.copyTexSubImage3D(ze,Re,ke,ft,Ot+jn,Ve,nt,Be,Ae):U.copyTexSubImage2D(ze,Re,ke,ft,Ve,nt,Be,Ae);Ee.bindFramebuffer(U.READ_FRAMEBUFFER,null),Ee.bindFramebuffer(U.DRAW_FRAMEBUFFER,null)}else _s?E.isDataTexture||E.isData3DTexture?U.texSubImage3D(ze,Re,ke,ft,Ot,Be,Ae,Ne,Mt,sn,wt.data):O.isCompressedArrayTexture?U.compressedTexSubImage3D(ze,Re,ke,ft,Ot,Be,Ae,Ne,Mt,wt.data):U.texSubImage3D(ze,Re,ke,ft,Ot,Be,Ae,Ne,Mt,sn,wt):E.isDataTexture?U.texSubImage2D(U.TEXTURE_2D,Re,ke,ft,Be,Ae,Mt,sn,wt.data):E.isCompressedTexture?U.compressedTexSubImage2D(U.TEXTURE_2D,Re,ke,ft,wt.width,wt.height,Mt,wt.data):U.texSubImage2D(U.TEXTURE_2D,Re,ke,ft,Be,Ae,Mt,sn,wt);Ee.pixelStorei(U.UNPACK_ROW_LENGTH,un),Ee.pixelStorei(U.UNPACK_IMAGE_HEIGHT,xt),Ee.pixelStorei(U.UNPACK_SKIP_PIXELS,gs),Ee.pixelStorei(U.UNPACK_SKIP_ROWS,rn),Ee.pixelStorei(U.UNPACK_SKIP_IMAGES,Sa),Re===0&&O.generateMipmaps===!0&&O.mipmapsAutoUpdate===!0&&U.generateMipmap(ze),Ee.unbindTexture()},this.initRenderTarget=function(E){Ye.get(E).__webglFramebuffer===void 0&&Ke.setupRenderTarget(E)},this.initTexture=function(E){E.isCubeTexture?Ke.setTextureCube(E,0):E.isData3DTexture?Ke.setTexture3D(E,0):E.isDataArrayTexture||E.isCompressedArrayTexture?Ke.setTexture2DArray(E,0):Ke.setTexture2D(E,0),Ee.unbindTexture()},this.resetState=function(){re=0,Y=0,me=null,Ee.reset(),be.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return Gn}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(e){this._outputColorSpace=e;let t=this.getContext();t.drawingBufferColorSpace=ht._getDrawingBufferColorSpace(e),t.unpackColorSpace=ht._getUnpackColorSpace()}};var ig={type:"change"},Qu={type:"start"},rg={type:"end"},Lc=new hi,sg=new gn,fS=Math.cos(70*kr.DEG2RAD),qt=new L,Cn=2*Math.PI,yt={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},Ju=1e-6,Nc=class extends Jo{constructor(e,t=null){super(e,t),this.state=yt.NONE,this.target=new L,this.cursor=new L,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:rs.ROTATE,MIDDLE:rs.DOLLY,RIGHT:rs.PAN},this.touches={ONE:os.ROTATE,TWO:os.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new L,this._lastQuaternion=new cn,this._lastTargetPosition=new L,this._quat=new cn().setFromUnitVectors(e.up,new L(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new ss,this._sphericalDelta=new ss,this._scale=1,this._panOffset=new L,this._rotateStart=new xe,this._rotateEnd=new xe,this._rotateDelta=new xe,this._panStart=new xe,this._panEnd=new xe,this._panDelta=new xe,this._dollyStart=new xe,this._dollyEnd=new xe,this._dollyDelta=new xe,this._dollyDirection=new L,this._mouse=new xe,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=mS.bind(this),this._onPointerDown=pS.bind(this),this._onPointerUp=gS.bind(this),this._onContextMenu=SS.bind(this),this._onMouseWheel=yS.bind(this),this._onKeyDown=vS.bind(this),this._onTouchStart=bS.bind(this),this._onTouchMove=MS.bind(this),this._onMouseDown=_S.bind(this),this._onMouseMove=xS.bind(this),this._interceptControlDown=wS.bind(this),this._interceptControlUp=TS.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(e){this._cursorStyle=e,e==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(e){super.connect(e),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=yt.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(e){e.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=e}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(ig),this.update(),this.state=yt.NONE}pan(e,t){this._pan(e,t),this.update()}dollyIn(e){this._dollyIn(e),this.update()}dollyOut(e){this._dollyOut(e),this.update()}rotateLeft(e){this._rotateLeft(e),this.update()}rotateUp(e){this._rotateUp(e),this.update()}update(e=null){let t=this.object.position;qt.copy(t).sub(this.target),qt.applyQuaternion(this._quat),this._spherical.setFromVector3(qt),this.autoRotate&&this.state===yt.NONE&&this._rotateLeft(this._getAutoRotationAngle(e)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=Cn:n>Math.PI&&(n-=Cn),s<-Math.PI?s+=Cn:s>Math.PI&&(s-=Cn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(qt.setFromSpherical(this._spherical),qt.applyQuaternion(this._quatInverse),t.copy(this.target).add(qt),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=qt.length();o=this._clampDistance(a*this._scale);let c=a-o;this.object.position.addScaledVector(this._dollyDirection,c),this.object.updateMatrixWorld(),r=!!c}else if(this.object.isOrthographicCamera){let a=new L(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let c=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=c!==this.object.zoom;let l=new L(this._mouse.x,this._mouse.y,0);l.unproject(this.object),this.object.position.sub(l).add(a),this.object.updateMatrixWorld(),o=qt.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Lc.origin.copy(this.object.position),Lc.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Lc.direction))<fS?this.object.lookAt(this.target):(sg.setFromNormalAndCoplanarPoint(this.object.up,this.target),Lc.intersectPlane(sg,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>Ju||8*(1-this._lastQuaternion.dot(this.object.quaternion))>Ju||this._lastTargetPosition.distanceToSquared(this.target)>Ju?(this.dispatchEvent(ig),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(e){return e!==null?Cn/60*this.autoRotateSpeed*e:Cn/60/60*this.autoRotateSpeed}_getZoomScale(e){let t=Math.abs(e*.01);return Math.pow(.95,this.zoomSpeed*t)}_rotateLeft(e){this._sphericalDelta.theta-=e}_rotateUp(e){this._sphericalDelta.phi-=e}_panLeft(e,t){qt.setFromMatrixColumn(t,0),qt.multiplyScalar(-e),this._panOffset.add(qt)}_panUp(e,t){this.screenSpacePanning===!0?qt.setFromMatrixColumn(t,1):(qt.setFromMatrixColumn(t,0),qt.crossVectors(this.object.up,qt)),qt.multiplyScalar(e),this._panOffset.add(qt)}_pan(e,t){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;qt.copy(s).sub(this.target);let r=qt.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*e*r/n.clientHeight,this.object.matrix),this._panUp(2*t*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(e*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(t*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(e){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=e:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(e){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=e:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(e,t){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=e-n.left,r=t-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(e){return Math.max(this.minDistance,Math.min(this.maxDistance,e))}_handleMouseDownRotate(e){this._rotateStart.set(e.clientX,e.clientY)}_handleMouseDownDolly(e){this._updateZoomParameters(e.clientX,e.clientY),this._dollyStart.set(e.clientX,e.clientY)}_handleMouseDownPan(e){this._panStart.set(e.clientX,e.clientY)}_handleMouseMoveRotate(e){this._rotateEnd.set(e.clientX,e.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let t=this.domElement;this._rotateLeft(Cn*this._rotateDelta.x/t.clientHeight),this._rotateUp(Cn*this._rotateDelta.y/t.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(e){this._dollyEnd.set(e.clientX,e.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(e){this._panEnd.set(e.clientX,e.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(e){this._updateZoomParameters(e.clientX,e.clientY),e.deltaY<0?this._dollyIn(this._getZoomScale(e.deltaY)):e.deltaY>0&&this._dollyOut(this._getZoomScale(e.deltaY)),this.update()}_handleKeyDown(e){let t=!1;switch(e.code){case this.keys.UP:e.ctrlKey||e.metaKey||e.shiftKey?this.enableRotate&&this._rotateUp(Cn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),t=!0;break;case this.keys.BOTTOM:e.ctrlKey||e.metaKey||e.shiftKey?this.enableRotate&&this._rotateUp(-Cn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),t=!0;break;case this.keys.LEFT:e.ctrlKey||e.metaKey||e.shiftKey?this.enableRotate&&this._rotateLeft(Cn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),t=!0;break;case this.keys.RIGHT:e.ctrlKey||e.metaKey||e.shiftKey?this.enableRotate&&this._rotateLeft(-Cn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),t=!0;break}t&&(e.preventDefault(),this.update())}_handleTouchStartRotate(e){if(this._pointers.length===1)this._rotateStart.set(e.pageX,e.pageY);else{let t=this._getSecondPointerPosition(e),n=.5*(e.pageX+t.x),s=.5*(e.pageY+t.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(e){if(this._pointers.length===1)this._panStart.set(e.pageX,e.pageY);else{let t=this._getSecondPointerPosition(e),n=.5*(e.pageX+t.x),s=.5*(e.pageY+t.y);this._panStart.set(n,s)}}_handleTouchStartDolly(e){let t=this._getSecondPointerPosition(e),n=e.pageX-t.x,s=e.pageY-t.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(e){this.enableZoom&&this._handleTouchStartDolly(e),this.enablePan&&this._handleTouchStartPan(e)}_handleTouchStartDollyRotate(e){this.enableZoom&&this._handleTouchStartDolly(e),this.enableRotate&&this._handleTouchStartRotate(e)}_handleTouchMoveRotate(e){if(this._pointers.length==1)this._rotateEnd.set(e.pageX,e.pageY);else{let n=this._getSecondPointerPosition(e),s=.5*(e.pageX+n.x),r=.5*(e.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let t=this.domElement;this._rotateLeft(Cn*this._rotateDelta.x/t.clientHeight),this._rotateUp(Cn*this._rotateDelta.y/t.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(e){if(this._pointers.length===1)this._panEnd.set(e.pageX,e.pageY);else{let t=this._getSecondPointerPosition(e),n=.5*(e.pageX+t.x),s=.5*(e.pageY+t.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(e){let t=this._getSecondPointerPosition(e),n=e.pageX-t.x,s=e.pageY-t.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(e.pageX+t.x)*.5,a=(e.pageY+t.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(e){this.enableZoom&&this._handleTouchMoveDolly(e),this.enablePan&&this._handleTouchMovePan(e)}_handleTouchMoveDollyRotate(e){this.enableZoom&&this._handleTouchMoveDolly(e),this.enableRotate&&this._handleTouchMoveRotate(e)}_addPointer(e){this._pointers.push(e.pointerId)}_removePointer(e){delete this._pointerPositions[e.pointerId];for(let t=0;t<this._pointers.length;t++)if(this._pointers[t]==e.pointerId){this._pointers.splice(t,1);return}}_isTrackingPointer(e){for(let t=0;t<this._pointers.length;t++)if(this._pointers[t]==e.pointerId)return!0;return!1}_trackPointer(e){let t=this._pointerPositions[e.pointerId];t===void 0&&(t=new xe,this._pointerPositions[e.pointerId]=t),t.set(e.pageX,e.pageY)}_getSecondPointerPosition(e){let t=e.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[t]}_customWheelEvent(e){let t=e.deltaMode,n={clientX:e.clientX,clientY:e.clientY,deltaY:e.deltaY};switch(t){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return e.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function pS(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function mS(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function gS(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(rg),this.state=yt.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let e=this._pointers[0],t=this._pointerPositions[e];this._onTouchStart({pointerId:e,pageX:t.x,pageY:t.y});break}}function _S(i){let e;switch(i.button){case 0:e=this.mouseButtons.LEFT;break;case 1:e=this.mouseButtons.MIDDLE;break;case 2:e=this.mouseButtons.RIGHT;break;default:e=-1}switch(e){case rs.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=yt.DOLLY;break;case rs.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=yt.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=yt.ROTATE}break;case rs.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=yt.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=yt.PAN}break;default:this.state=yt.NONE}this.state!==yt.NONE&&this.dispatchEvent(Qu)}function xS(i){switch(this.state){case yt.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case yt.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case yt.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function yS(i){this.enabled===!1||this.enableZoom===!1||this.state!==yt.NONE||(i.preventDefault(),this.dispatchEvent(Qu),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(rg))}function vS(i){this.enabled!==!1&&this._handleKeyDown(i)}function bS(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case os.ROTATE:if(this.enableRotate===!1){this.state=yt.NONE;break}this._handleTouchStartRotate(i),this.state=yt.TOUCH_ROTATE;break;case os.PAN:if(this.enablePan===!1){this.state=yt.NONE;break}this._handleTouchStartPan(i),this.state=yt.TOUCH_PAN;break;default:this.state=yt.NONE}break;case 2:switch(this.touches.TWO){case os.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=yt.TOUCH_DOLLY_PAN;break;case os.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=yt.TOUCH_DOLLY_ROTATE;break;default:this.state=yt.NONE}break;default:this.state=yt.NONE}this.state!==yt.NONE&&this.dispatchEvent(Qu)}function MS(i){switch(this._trackPointer(i),this.state){case yt.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case yt.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case yt.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case yt.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=yt.NONE}}function SS(i){this.enabled!==!1&&i.preventDefault()}function wS(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function TS(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function ed(i,e){if(e===Mu)return console.warn("THREE.BufferGeometryUtils.toTrianglesDrawMode(): Geometry already defined as triangles."),i;if(e===Br||e===oa){let t=i.getIndex();if(t===null){let r=[],o=i.getAttribute("position");if(o!==void 0){for(let a=0;a<o.count;a++)r.push(a);i.setIndex(r),t=i.getIndex()}else return console.error("THREE.BufferGeometryUtils.toTrianglesDrawMode(): Undefined position attribute. Processing not possible."),i}let n=t.count-2,s=[];if(e===Br)for(let r=1;r<=n;r++)s.push(t.getX(0)),s.push(t.getX(r)),s.push(t.getX(r+1));else for(let r=0;r<n;r++)r%2===0?(s.push(t.getX(r)),s.push(t.getX(r+1)),s.push(t.getX(r+2))):(s.push(t.getX(r+2)),s.push(t.getX(r+1)),s.push(t.getX(r)));return s.length/3!==n&&console.error("THREE.BufferGeometryUtils.toTrianglesDrawMode(): Unable to generate correct amount of triangles."),i.setIndex(s),i.clearGroups(),i}else return console.error("THREE.BufferGeometryUtils.toTrianglesDrawMode(): Unknown draw mode:",e),i}function og(i){let e=new Map,t=new Map,n=i.clone();return ag(i,n,function(s,r){e.set(r,s),t.set(s,r)}),n.traverse(function(s){if(!s.isSkinnedMesh)return;let r=s,o=e.get(s),a=o.skeleton.bones;r.skeleton=o.skeleton.clone(),r.bindMatrix.copy(o.bindMatrix),r.skeleton.bones=a.map(function(c){return t.get(c)}),r.bind(r.skeleton,r.bindMatrix)}),n}function ag(i,e,t){t(i,e);for(let n=0;n<i.children.length;n++)ag(i.children[n],e.children[n],t)}var Dc=class extends fi{constructor(e){super(e),this.dracoLoader=null,this.ktx2Loader=null,this.meshoptDecoder=null,this.pluginCallbacks=[],this.register(function(t){return new ad(t)}),this.register(function(t){return new ld(t)}),this.register(function(t){return new cd(t)}),this.register(function(t){return new xd(t)}),this.register(function(t){return new yd(t)}),this.register(function(t){return new vd(t)}),this.register(function(t){return new ud(t)}),this.register(function(t){return new dd(t)}),this.register(function(t){return new fd(t)}),this.register(function(t){return new pd(t)}),this.register(function(t){return new od(t)}),this.register(function(t){return new md(t)}),this.register(function(t){return new hd(t)}),this.register(function(t){return new _d(t)}),this.register(function(t){return new gd(t)}),this.register(function(t){return new sd(t)}),this.register(function(t){return new Uc(t,ut.EXT_MESHOPT_COMPRESSION)}),this.register(function(t){return new Uc(t,ut.KHR_MESHOPT_COMPRESSION)}),this.register(function(t){return new bd(t)})}load(e,t,n,s){let r=this,o;if(this.resourcePath!=="")o=this.resourcePath;else if(this.path!==""){let l=Fi.extractUrlBase(e);o=Fi.resolveURL(l,this.path)}else o=Fi.extractUrlBase(e);this.manager.itemStart(e);let a=function(l){s?s(l):console.error(l),r.manager.itemError(e),r.manager.itemEnd(e)},c=new Cr(this.manager);c.setPriority(this.priority),c.setCache(this.cache),c.setPath(this.path),c.setResponseType("arraybuffer"),c.setRequestHeader(this.requestHeader),c.setWithCredentials(this.withCredentials),c.load(e,function(l){try{r.parse(l,o,function(h){t(h),r.manager.itemEnd(e)},a)}catch(h){a(h)}},n,a)}setDRACOLoader(e){return this.dracoLoader=e,this}setKTX2Loader(e){return this.ktx2Loader=e,this}setMeshoptDecoder(e){return this.meshoptDecoder=e,this}register(e){return this.pluginCallbacks.indexOf(e)===-1&&this.pluginCallbacks.push(e),this}unregister(e){return this.pluginCallbacks.indexOf(e)!==-1&&this.pluginCallbacks.splice(this.pluginCallbacks.indexOf(e),1),this}parse(e,t,n,s){let r,o={},a={},c=new TextDecoder;if(typeof e=="string")r=JSON.parse(e);else if(e instanceof ArrayBuffer)if(c.decode(new Uint8Array(e,0,4))===dg){try{o[ut.KHR_BINARY_GLTF]=new Md(e)}catch(d){s&&s(d);return}r=JSON.parse(o[ut.KHR_BINARY_GLTF].content)}else r=JSON.parse(c.decode(e));else r=e;if(r.asset===void 0||r.asset.version[0]<2){s&&s(new Error("THREE.GLTFLoader: Unsupported asset. glTF versions >=2.0 are supported."));return}let l=new Cd(r,{path:t||this.resourcePath||"",crossOrigin:this.crossOrigin,priority:this.priority,cache:this.cache,withCredentials:this.withCredentials,requestHeader:this.requestHeader,manager:this.manager,ktx2Loader:this.ktx2Loader,meshoptDecoder:this.meshoptDecoder});l.fileLoader.setRequestHeader(this.requestHeader);for(let h=0;h<this.pluginCallbacks.length;h++){let d=this.pluginCallbacks[h](l);d.name||console.error("THREE.GLTFLoader: Invalid plugin found: missing name"),a[d.name]=d,o[d.name]=!0}if(r.extensionsUsed)for(let h=0;h<r.extensionsUsed.length;++h){let d=r.extensionsUsed[h],u=r.extensionsRequired||[];switch(d){case ut.KHR_MATERIALS_UNLIT:o[d]=new rd;break;case ut.KHR_DRACO_MESH_COMPRESSION:o[d]=new Sd(r,this.dracoLoader);break;case ut.KHR_TEXTURE_TRANSFORM:o[d]=new wd;break;case ut.KHR_MESH_QUANTIZATION:o[d]=new Td;break;default:u.indexOf(d)>=0&&a[d]===void 0&&console.warn('THREE.GLTFLoader: Unknown extension "'+d+'".')}}l.setExtensions(o),l.setPlugins(a),l.parse(n,s)}parseAsync(e,t){let n=this;return new Promise(function(s,r){n.parse(e,t,s,r)})}};function ES(){let i={};return{get:function(e){return i[e]},add:function(e,t){i[e]=t},remove:function(e){delete i[e]},removeAll:function(){i={}}}}function Lt(i,e,t){let n=i.json.materials[e];return n.extensions&&n.extensions[t]?n.extensions[t]:null}var ut={KHR_BINARY_GLTF:"KHR_binary_glTF",KHR_DRACO_MESH_COMPRESSION:"KHR_draco_mesh_compression",KHR_LIGHTS_PUNCTUAL:"KHR_lights_punctual",KHR_MATERIALS_CLEARCOAT:"KHR_materials_clearcoat",KHR_MATERIALS_DIFFUSE_ROUGHNESS:"KHR_materials_diffuse_roughness",KHR_MATERIALS_DISPERSION:"KHR_materials_dispersion",KHR_MATERIALS_IOR:"KHR_materials_ior",KHR_MATERIALS_SHEEN:"KHR_materials_sheen",KHR_MATERIALS_SPECULAR:"KHR_materials_specular",KHR_MATERIALS_TRANSMISSION:"KHR_materials_transmission",KHR_MATERIALS_IRIDESCENCE:"KHR_materials_iridescence",KHR_MATERIALS_ANISOTROPY:"KHR_materials_anisotropy",KHR_MATERIALS_UNLIT:"KHR_materials_unlit",KHR_MATERIALS_VOLUME:"KHR_materials_volume",KHR_TEXTURE_BASISU:"KHR_texture_basisu",KHR_TEXTURE_TRANSFORM:"KHR_texture_transform",KHR_MESH_QUANTIZATION:"KHR_mesh_quantization",KHR_MATERIALS_EMISSIVE_STRENGTH:"KHR_materials_emissive_strength",EXT_MATERIALS_BUMP:"EXT_materials_bump",EXT_TEXTURE_WEBP:"EXT_texture_webp",EXT_TEXTURE_AVIF:"EXT_texture_avif",EXT_MESHOPT_COMPRESSION:"EXT_meshopt_compression",KHR_MESHOPT_COMPRESSION:"KHR_meshopt_compression",EXT_MESH_GPU_INSTANCING:"EXT_mesh_gpu_instancing"},sd=class{constructor(e){this.parser=e,this.name=ut.KHR_LIGHTS_PUNCTUAL,this.cache={refs:{},uses:{}}}_markDefs(){let e=this.parser,t=this.parser.json.nodes||[];for(let n=0,s=t.length;n<s;n++){let r=t[n];r.extensions&&r.extensions[this.name]&&r.extensions[this.name].light!==void 0&&e._addNodeRef(this.cache,r.extensions[this.name].light)}}_loadLight(e){let t=this.parser,n="light:"+e,s=t.cache.get(n);if(s)return s;let r=t.json,c=((r.extensions&&r.extensions[this.name]||{}).lights||[])[e],l,h=new Ge(16777215);c.color!==void 0&&h.setRGB(c.color[0],c.color[1],c.color[2],_n);let d=c.range!==void 0?c.range:0;switch(c.type){case"directional":l=new is(h),l.target.position.set(0,0,-1),l.add(l.target);break;case"point":l=new jo(h),l.distance=d;break;case"spot":l=new Yo(h),l.distance=d,c.spot=c.spot||{},c.spot.innerConeAngle=c.spot.innerConeAngle!==void 0?c.spot.innerConeAngle:0,c.spot.outerConeAngle=c.spot.outerConeAngle!==void 0?c.spot.outerConeAngle:Math.PI/4,l.angle=c.spot.outerConeAngle,l.penumbra=1-c.spot.innerConeAngle/c.spot.outerConeAngle,l.target.position.set(0,0,-1),l.add(l.target);break;default:throw new Error("THREE.GLTFLoader: Unexpected light type: "+c.type)}return l.position.set(0,0,0),gi(l,c),c.intensity!==void 0&&(l.intensity=c.intensity),l.name=t.createUniqueName(c.name||"light_"+e),s=Promise.resolve(l),t.cache.add(n,s),s}getDependency(e,t){if(e==="light")return this._loadLight(t)}createNodeAttachment(e){let t=this,n=this.parser,r=n.json.nodes[e],a=(r.extensions&&r.extensions[this.name]||{}).light;return a===void 0?null:this._loadLight(a).then(function(c){return n._getNodeRef(t.cache,a,c)})}},rd=class{constructor(){this.name=ut.KHR_MATERIALS_UNLIT}getMaterialType(){return wn}extendParams(e,t,n){let s=[];e.color=new Ge(1,1,1),e.opacity=1;let r=t.pbrMetallicRoughness;if(r){if(Array.isArray(r.baseColorFactor)){let o=r.baseColorFactor;e.color.setRGB(o[0],o[1],o[2],_n),e.opacity=o[3]}r.baseColorTexture!==void 0&&s.push(n.assignTexture(e,"map",r.baseColorTexture,Ct))}return Promise.all(s)}},od=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_EMISSIVE_STRENGTH}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);return n===null||n.emissiveStrength!==void 0&&(t.emissiveIntensity=n.emissiveStrength),Promise.resolve()}},ad=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_CLEARCOAT}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];if(n.clearcoatFactor!==void 0&&(t.clearcoat=n.clearcoatFactor),n.clearcoatTexture!==void 0&&s.push(this.parser.assignTexture(t,"clearcoatMap",n.clearcoatTexture)),n.clearcoatRoughnessFactor!==void 0&&(t.clearcoatRoughness=n.clearcoatRoughnessFactor),n.clearcoatRoughnessTexture!==void 0&&s.push(this.parser.assignTexture(t,"clearcoatRoughnessMap",n.clearcoatRoughnessTexture)),n.clearcoatNormalTexture!==void 0&&(s.push(this.parser.assignTexture(t,"clearcoatNormalMap",n.clearcoatNormalTexture)),n.clearcoatNormalTexture.scale!==void 0)){let r=n.clearcoatNormalTexture.scale;t.clearcoatNormalScale=new xe(r,r)}return Promise.all(s)}},ld=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_DIFFUSE_ROUGHNESS}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];return t.diffuseRoughness=n.diffuseRoughnessFactor!==void 0?n.diffuseRoughnessFactor:0,n.diffuseRoughnessTexture!==void 0&&s.push(this.parser.assignTexture(t,"diffuseRoughnessMap",n.diffuseRoughnessTexture)),Promise.all(s)}},cd=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_DISPERSION}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);return n===null||(t.dispersion=n.dispersion!==void 0?n.dispersion:0),Promise.resolve()}},hd=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_IRIDESCENCE}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];return n.iridescenceFactor!==void 0&&(t.iridescence=n.iridescenceFactor),n.iridescenceTexture!==void 0&&s.push(this.parser.assignTexture(t,"iridescenceMap",n.iridescenceTexture)),n.iridescenceIor!==void 0&&(t.iridescenceIOR=n.iridescenceIor),n.iridescenceThicknessMinimum!==void 0&&(t.iridescenceThicknessMinimum=n.iridescenceThicknessMinimum),n.iridescenceThicknessMaximum!==void 0&&(t.iridescenceThicknessMaximum=n.iridescenceThicknessMaximum),n.iridescenceThicknessTexture!==void 0&&s.push(this.parser.assignTexture(t,"iridescenceThicknessMap",n.iridescenceThicknessTexture)),Promise.all(s)}},ud=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_SHEEN}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];if(t.sheenColor=new Ge(0,0,0),t.sheenRoughness=0,t.sheen=1,n.sheenColorFactor!==void 0){let r=n.sheenColorFactor;t.sheenColor.setRGB(r[0],r[1],r[2],_n)}return n.sheenRoughnessFactor!==void 0&&(t.sheenRoughness=n.sheenRoughnessFactor),n.sheenColorTexture!==void 0&&s.push(this.parser.assignTexture(t,"sheenColorMap",n.sheenColorTexture,Ct)),n.sheenRoughnessTexture!==void 0&&s.push(this.parser.assignTexture(t,"sheenRoughnessMap",n.sheenRoughnessTexture)),Promise.all(s)}},dd=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_TRANSMISSION}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];return n.transmissionFactor!==void 0&&(t.transmission=n.transmissionFactor),n.transmissionTexture!==void 0&&s.push(this.parser.assignTexture(t,"transmissionMap",n.transmissionTexture)),Promise.all(s)}},fd=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_VOLUME}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];t.thickness=n.thicknessFactor!==void 0?n.thicknessFactor:0,n.thicknessTexture!==void 0&&s.push(this.parser.assignTexture(t,"thicknessMap",n.thicknessTexture)),t.attenuationDistance=n.attenuationDistance||1/0;let r=n.attenuationColor||[1,1,1];return t.attenuationColor=new Ge().setRGB(r[0],r[1],r[2],_n),Promise.all(s)}},pd=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_IOR}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);return n===null||(t.ior=n.ior!==void 0?n.ior:1.5,t.ior===0&&(t.ior=1e3)),Promise.resolve()}},md=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_SPECULAR}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];t.specularIntensity=n.specularFactor!==void 0?n.specularFactor:1,n.specularTexture!==void 0&&s.push(this.parser.assignTexture(t,"specularIntensityMap",n.specularTexture));let r=n.specularColorFactor||[1,1,1];return t.specularColor=new Ge().setRGB(r[0],r[1],r[2],_n),n.specularColorTexture!==void 0&&s.push(this.parser.assignTexture(t,"specularColorMap",n.specularColorTexture,Ct)),Promise.all(s)}},gd=class{constructor(e){this.parser=e,this.name=ut.EXT_MATERIALS_BUMP}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];return t.bumpScale=n.bumpFactor!==void 0?n.bumpFactor:1,n.bumpTexture!==void 0&&s.push(this.parser.assignTexture(t,"bumpMap",n.bumpTexture)),Promise.all(s)}},_d=class{constructor(e){this.parser=e,this.name=ut.KHR_MATERIALS_ANISOTROPY}getMaterialType(e){return Lt(this.parser,e,this.name)!==null?xn:null}extendMaterialParams(e,t){let n=Lt(this.parser,e,this.name);if(n===null)return Promise.resolve();let s=[];return n.anisotropyStrength!==void 0&&(t.anisotropy=n.anisotropyStrength),n.anisotropyRotation!==void 0&&(t.anisotropyRotation=n.anisotropyRotation),n.anisotropyTexture!==void 0&&s.push(this.parser.assignTexture(t,"anisotropyMap",n.anisotropyTexture)),Promise.all(s)}},xd=class{constructor(e){this.parser=e,this.name=ut.KHR_TEXTURE_BASISU}loadTexture(e){let t=this.parser,n=t.json,s=n.textures[e];if(!s.extensions||!s.extensions[this.name])return null;let r=s.extensions[this.name],o=t.options.ktx2Loader;if(!o){if(n.extensionsRequired&&n.extensionsRequired.indexOf(this.name)>=0)throw new Error("THREE.GLTFLoader: setKTX2Loader must be called before loading KTX2 textures");return null}return t.loadTextureImage(e,r.source,o)}},yd=class{constructor(e){this.parser=e,this.name=ut.EXT_TEXTURE_WEBP}loadTexture(e){let t=this.name,n=this.parser,s=n.json,r=s.textures[e];if(!r.extensions||!r.extensions[t])return null;let o=r.extensions[t],a=s.images[o.source],c=n.textureLoader;if(a.uri){let l=n.options.manager.getHandler(a.uri);l!==null&&(c=l)}return n.loadTextureImage(e,o.source,c)}},vd=class{constructor(e){this.parser=e,this.name=ut.EXT_TEXTURE_AVIF}loadTexture(e){let t=this.name,n=this.parser,s=n.json,r=s.textures[e];if(!r.extensions||!r.extensions[t])return null;let o=r.extensions[t],a=s.images[o.source],c=n.textureLoader;if(a.uri){let l=n.options.manager.getHandler(a.uri);l!==null&&(c=l)}return n.loadTextureImage(e,o.source,c)}},Uc=class{constructor(e,t){this.name=t,this.parser=e}loadBufferView(e){let t=this.parser.json,n=t.bufferViews[e];if(n.extensions&&n.extensions[this.name]){let s=n.extensions[this.name],r=this.parser.getDependency("buffer",s.buffer),o=this.parser.options.meshoptDecoder;if(!o||!o.supported){if(t.extensionsRequired&&t.extensionsRequired.indexOf(this.name)>=0)throw new Error("THREE.GLTFLoader: setMeshoptDecoder must be called before loading compressed files");return null}return r.then(function(a){let c=s.byteOffset||0,l=s.byteLength||0,h=s.count,d=s.byteStride,u=new Uint8Array(a,c,l);return o.decodeGltfBufferAsync?o.decodeGltfBufferAsync(h,d,u,s.mode,s.filter).then(function(f){return f.buffer}):o.ready.then(function(){let f=new ArrayBuffer(h*d);return o.decodeGltfBuffer(new Uint8Array(f),h,d,u,s.mode,s.filter),f})})}else return null}},bd=class{constructor(e){this.name=ut.EXT_MESH_GPU_INSTANCING,this.parser=e}createNodeMesh(e){let t=this.parser.json,n=t.nodes[e];if(!n.extensions||!n.extensions[this.name]||n.mesh===void 0)return null;let s=t.meshes[n.mesh];for(let l of s.primitives)if(l.mode!==Xn.TRIANGLES&&l.mode!==Xn.TRIANGLE_STRIP&&l.mode!==Xn.TRIANGLE_FAN&&l.mode!==void 0)return null;let o=n.extensions[this.name].attributes,a=[],c={};for(let l in o)a.push(this.parser.getDependency("accessor",o[l]).then(h=>(c[l]=h,c[l])));return a.length<1?null:(a.push(this.parser.createNodeMesh(e)),Promise.all(a).then(l=>{let h=l.pop(),d=h.isGroup?h.children:[h],u=l[0].count,f=[];for(let p of d){let _=new je,g=new L,m=new cn,v=new L(1,1,1),M=new To(p.geometry,p.material,u);for(let S=0;S<u;S++)c.TRANSLATION&&g.fromBufferAttribute(c.TRANSLATION,S),c.ROTATION&&m.fromBufferAttribute(c.ROTATION,S),c.SCALE&&v.fromBufferAttribute(c.SCALE,S),M.setMatrixAt(S,_.compose(g,m,v));let b=null;for(let S in c)if(S==="_COLOR_0"){let T=c[S];M.instanceColor=new Ci(T.array,T.itemSize,T.normalized)}else if(S!=="TRANSLATION"&&S!=="ROTATION"&&S!=="SCALE"){if(b===null){let y=M.geometry;b=new Pt,b.name=y.name;for(let w in y.attributes)b.setAttribute(w,y.attributes[w]);for(let w in y.morphAttributes)b.morphAttributes[w]=y.morphAttributes[w];y.index!==null&&b.setIndex(y.index),b.morphTargetsRelative=y.morphTargetsRelative;for(let w of y.groups)b.addGroup(w.start,w.count,w.materialIndex);y.boundingBox!==null&&(b.boundingBox=y.boundingBox.clone()),y.boundingSphere!==null&&(b.boundingSphere=y.boundingSphere.clone()),b.drawRange.start=y.drawRange.start,b.drawRange.count=y.drawRange.count,b.userData=Object.assign({},y.userData),M.geometry=b}let T=c[S];b.setAttribute(S,new Ci(T.array,T.itemSize,T.normalized))}At.prototype.copy.call(M,p),this.parser.assignFinalMaterial(M),f.push(M)}return h.isGroup?(h.clear(),h.add(...f),h):f[0]}))}},dg="glTF",da=12,lg={JSON:1313821514,BIN:5130562},Md=class{constructor(e){this.name=ut.KHR_BINARY_GLTF,this.content=null,this.body=null;let t=new DataView(e,0,da),n=new TextDecoder;if(this.header={magic:n.decode(new Uint8Array(e.slice(0,4))),version:t.getUint32(4,!0),length:t.getUint32(8,!0)},this.header.magic!==dg)throw new Error("THREE.GLTFLoader: Unsupported glTF-Binary header.");if(this.header.version<2)throw new Error("THREE.GLTFLoader: Legacy binary file detected.");let s=this.header.length-da,r=new DataView(e,da),o=0;for(;o<s;){let a=r.getUint32(o,!0);o+=4;let c=r.getUint32(o,!0);if(o+=4,c===lg.JSON){let l=new Uint8Array(e,da+o,a);this.content=n.decode(l)}else if(c===lg.BIN){let l=da+o;this.body=e.slice(l,l+a)}o+=a}if(this.content===null)throw new Error("THREE.GLTFLoader: JSON content not found.")}},Sd=class{constructor(e,t){if(!t)throw new Error("THREE.GLTFLoader: No DRACOLoader instance provided.");this.name=ut.KHR_DRACO_MESH_COMPRESSION,this.json=e,this.dracoLoader=t,this.dracoLoader.preload()}decodePrimitive(e,t){let n=this.json,s=this.dracoLoader,r=e.extensions[this.name].bufferView,o=e.extensions[this.name].attributes,a={},c={},l={};for(let h in o){let d=Ad[h]||h.toLowerCase();a[d]=o[h]}for(let h in e.attributes){let d=Ad[h]||h.toLowerCase();if(o[h]!==void 0){let u=n.accessors[e.attributes[h]],f=Gr[u.componentType];l[d]=f.name,c[d]=u.normalized===!0}}return t.getDependency("bufferView",r).then(function(h){return new Promise(function(d,u){s.decodeDracoFile(h,function(f){for(let p in f.attributes){let _=f.attributes[p],g=c[p];g!==void 0&&(_.normalized=g)}d(f)},a,l,_n,u)})})}},wd=class{constructor(){this.name=ut.KHR_TEXTURE_TRANSFORM}extendTexture(e,t){if((t.texCoord===void 0||t.texCoord===e.channel)&&t.offset===void 0&&t.rotation===void 0&&t.scale===void 0)return e;if(e=e.clone(),t.texCoord!==void 0&&(e.channel=t.texCoord),t.offset!==void 0&&e.offset.fromArray(t.offset),t.rotation!==void 0&&(e.rotation=t.rotation),t.scale!==void 0&&e.repeat.fromArray(t.scale),t.rotation!==void 0){let n=Math.cos(e.rotation),s=Math.sin(e.rotation);e.matrix.set(e.repeat.x*n,e.repeat.y*s,e.offset.x,-e.repeat.x*s,e.repeat.y*n,e.offset.y,0,0,1),e.matrixAutoUpdate=!1}return e.needsUpdate=!0,e}},Td=class{constructor(){this.name=ut.KHR_MESH_QUANTIZATION}},Oc=class extends di{constructor(e,t,n,s){super(e,t,n,s)}copySampleValue_(e){let t=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=e*s*3+s;for(let o=0;o!==s;o++)t[o]=n[r+o];return t}interpolate_(e,t,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=a*2,l=a*3,h=s-t,d=(n-t)/h,u=d*d,f=u*d,p=e*l,_=p-l,g=-2*f+3*u,m=f-u,v=1-g,M=m-u+d;for(let b=0;b!==a;b++){let S=o[_+b+a],T=o[_+b+c]*h,y=o[p+b+a],w=o[p+b]*h;r[b]=v*S+M*T+g*y+m*w}return r}},AS=new cn,Ed=class extends Oc{interpolate_(e,t,n,s){let r=super.interpolate_(e,t,n,s);return AS.fromArray(r).normalize().toArray(r),r}},Xn={FLOAT:5126,FLOAT_MAT3:35675,FLOAT_MAT4:35676,FLOAT_VEC2:35664,FLOAT_VEC3:35665,FLOAT_VEC4:35666,LINEAR:9729,REPEAT:10497,SAMPLER_2D:35678,POINTS:0,LINES:1,LINE_LOOP:2,LINE_STRIP:3,TRIANGLES:4,TRIANGLE_STRIP:5,TRIANGLE_FAN:6,UNSIGNED_BYTE:5121,UNSIGNED_SHORT:5123},Gr={5120:Int8Array,5121:Uint8Array,5122:Int16Array,5123:Uint16Array,5125:Uint32Array,5126:Float32Array},cg={9728:Dt,9729:Vt,9984:Hl,9985:Or,9986:Bs,9987:Wn},hg={33071:Hn,33648:pr,10497:Ji},td={SCALAR:1,VEC2:2,VEC3:3,VEC4:4,MAT2:4,MAT3:9,MAT4:16},Ad={POSITION:"position",NORMAL:"normal",TANGENT:"tangent",TEXCOORD_0:"uv",TEXCOORD_1:"uv1",TEXCOORD_2:"uv2",TEXCOORD_3:"uv3",COLOR_0:"color",WEIGHTS_0:"skinWeight",JOINTS_0:"skinIndex"},ls={scale:"scale",translation:"position",rotation:"quaternion",weights:"morphTargetInfluences"},RS={CUBICSPLINE:void 0,LINEAR:Es,STEP:Ts},nd={OPAQUE:"OPAQUE",MASK:"MASK",BLEND:"BLEND"};function CS(i){return i.DefaultMaterial===void 0&&(i.DefaultMaterial=new Ls({color:16777215,emissive:0,metalness:1,roughness:1,transparent:!1,depthTest:!0,side:An})),i.DefaultMaterial}function Gs(i,e,t){for(let n in t.extensions)i[n]===void 0&&(e.userData.gltfExtensions=e.userData.gltfExtensions||{},e.userData.gltfExtensions[n]=t.extensions[n])}function gi(i,e){e.extras!==void 0&&(typeof e.extras=="object"?Object.assign(i.userData,e.extras):console.warn("THREE.GLTFLoader: Ignoring primitive type .extras, "+e.extras))}function IS(i,e,t){let n=!1,s=!1,r=!1;for(let l=0,h=e.length;l<h;l++){let d=e[l];if(d.POSITION!==void 0&&(n=!0),d.NORMAL!==void 0&&(s=!0),d.COLOR_0!==void 0&&(r=!0),n&&s&&r)break}if(!n&&!s&&!r)return Promise.resolve(i);let o=[],a=[],c=[];for(let l=0,h=e.length;l<h;l++){let d=e[l];if(n){let u=d.POSITION!==void 0?t.getDependency("accessor",d.POSITION):i.attributes.position;o.push(u)}if(s){let u=d.NORMAL!==void 0?t.getDependency("accessor",d.NORMAL):i.attributes.normal;a.push(u)}if(r){let u=d.COLOR_0!==void 0?t.getDependency("accessor",d.COLOR_0):i.attributes.color;c.push(u)}}return Promise.all([Promise.all(o),Promise.all(a),Promise.all(c)]).then(function(l){let h=l[0],d=l[1],u=l[2];return n&&(i.morphAttributes.position=h),s&&(i.morphAttributes.normal=d),r&&(i.morphAttributes.color=u),i.morphTargetsRelative=!0,i})}function PS(i,e){if(i.updateMorphTargets(),e.weights!==void 0)for(let t=0,n=e.weights.length;t<n;t++)i.morphTargetInfluences[t]=e.weights[t];if(e.extras&&Array.isArray(e.extras.targetNames)){let t=e.extras.targetNames;if(i.morphTargetInfluences.length===t.length){i.morphTargetDictionary={};for(let n=0,s=t.length;n<s;n++)i.morphTargetDictionary[t[n]]=n}else console.warn("THREE.GLTFLoader: Invalid extras.targetNames length. Ignoring names.")}}function LS(i){let e,t=i.extensions&&i.extensions[ut.KHR_DRACO_MESH_COMPRESSION];if(t?e="draco:"+t.bufferView+":"+t.indices+":"+id(t.attributes):e=i.indices+":"+id(i.attributes)+":"+i.mode,i.targets!==void 0)for(let n=0,s=i.targets.length;n<s;n++)e+=":"+id(i.targets[n]);return e}function id(i){let e="",t=Object.keys(i).sort();for(let n=0,s=t.length;n<s;n++)e+=t[n]+":"+i[t[n]]+";";return e}function Rd(i){switch(i){case Int8Array:return 1/127;case Uint8Array:return 1/255;case Int16Array:return 1/32767;case Uint16Array:return 1/65535;default:throw new Error("THREE.GLTFLoader: Unsupported normalized accessor component type.")}}function NS(i){return i.search(/\.jpe?g($|\?)/i)>0||i.search(/^data\:image\/jpeg/)===0?"image/jpeg":i.search(/\.webp($|\?)/i)>0||i.search(/^data\:image\/webp/)===0?"image/webp":i.search(/\.ktx2($|\?)/i)>0||i.search(/^data\:image\/ktx2/)===0?"image/ktx2":"image/png"}var DS=new je,Cd=class{constructor(e={},t={}){this.json=e,this.extensions={},this.plugins={},this.options=t,this.cache=new ES,this.associations=new Map,this.primitiveCache={},this.nodeCache={},this.meshCache={refs:{},uses:{}},this.cameraCache={refs:{},uses:{}},this.lightCache={refs:{},uses:{}},this.sourceCache={},this.textureCache={},this.nodeNamesUsed={};let n=!1,s=-1,r=!1,o=-1;if(typeof navigator<"u"&&typeof navigator.userAgent<"u"){let a=navigator.userAgent;n=/^((?!chrome|android).)*safari/i.test(a)===!0;let c=a.match(/Version\/(\d+)/);s=n&&c?parseInt(c[1],10):-1,r=a.indexOf("Firefox")>-1,o=r?a.match(/Firefox\/([0-9]+)\./)[1]:-1}typeof createImageBitmap>"u"||n&&s<17||r&&o<98?(this.textureLoader=new $o(this.options.manager),this.textureLoader.setPriority(this.options.priority),this.textureLoader.setCache(this.options.cache)):(this.textureLoader=new Zo(this.options.manager),this.textureLoader.setPriority(this.options.priority),this.textureLoader.setCache(this.options.cache)),this.textureLoader.setCrossOrigin(this.options.crossOrigin),this.textureLoader.setWithCredentials(this.options.withCredentials),this.textureLoader.setRequestHeader(this.options.requestHeader),this.fileLoader=new Cr(this.options.manager),this.fileLoader.setPriority(this.options.priority),this.fileLoader.setCache(this.options.cache),this.fileLoader.setResponseType("arraybuffer"),(this.options.withCredentials||this.options.crossOrigin==="use-credentials")&&this.fileLoader.setWithCredentials(!0)}setExtensions(e){this.extensions=e}setPlugins(e){this.plugins=e}parse(e,t){let n=this,s=this.json,r=this.extensions;this.cache.removeAll(),this.nodeCache={},this._invokeAll(function(o){return o._markDefs&&o._markDefs()}),Promise.all(this._invokeAll(function(o){return o.beforeRoot&&o.beforeRoot()})).then(function(){return Promise.all([n.getDependencies("scene"),n.getDependencies("animation"),n.getDependencies("camera")])}).then(function(o){let a={scene:o[0][s.scene||0],scenes:o[0],animations:o[1],cameras:o[2],asset:s.asset,parser:n,userData:{}};return Gs(r,a,s),gi(a,s),Promise.all(n._invokeAll(function(c){return c.afterRoot&&c.afterRoot(a)})).then(function(){for(let c of a.scenes)c.updateMatrixWorld();e(a)})}).catch(t)}_markDefs(){let e=this.json.nodes||[],t=this.json.skins||[],n=this.json.meshes||[];for(let s=0,r=t.length;s<r;s++){let o=t[s].joints;for(let a=0,c=o.length;a<c;a++)e[o[a]].isBone=!0}for(let s=0,r=e.length;s<r;s++){let o=e[s];o.mesh!==void 0&&(this._addNodeRef(this.meshCache,o.mesh),o.skin!==void 0&&(n[o.mesh].isSkinnedMesh=!0)),o.camera!==void 0&&this._addNodeRef(this.cameraCache,o.camera)}}_addNodeRef(e,t){t!==void 0&&(e.refs[t]===void 0&&(e.refs[t]=e.uses[t]=0),e.refs[t]++)}_getNodeRef(e,t,n){if(e.refs[t]<=1)return n;let s=n.clone(),r=(o,a)=>{let c=this.associations.get(o);c!=null&&this.associations.set(a,c);for(let[l,h]of o.children.entries())r(h,a.children[l])};return r(n,s),s.name+="_instance_"+e.uses[t]++,s}_invokeOne(e){let t=Object.values(this.plugins);t.push(this);for(let n=0;n<t.length;n++){let s=e(t[n]);if(s)return s}return null}_invokeAll(e){let t=Object.values(this.plugins);t.unshift(this);let n=[];for(let s=0;s<t.length;s++){let r=e(t[s]);r&&n.push(r)}return n}getDependency(e,t){let n=e+":"+t,s=this.cache.get(n);if(!s){switch(e){case"scene":s=this.loadScene(t);break;case"node":s=this._invokeOne(function(r){return r.loadNode&&r.loadNode(t)});break;case"mesh":s=this._invokeOne(function(r){return r.loadMesh&&r.loadMesh(t)});break;case"accessor":s=this.loadAccessor(t);break;case"bufferView":s=this._invokeOne(function(r){return r.loadBufferView&&r.loadBufferView(t)});break;case"buffer":s=this.loadBuffer(t);break;case"material":s=this._invokeOne(function(r){return r.loadMaterial&&r.loadMaterial(t)});break;case"texture":s=this._invokeOne(function(r){return r.loadTexture&&r.loadTexture(t)});break;case"skin":s=this.loadSkin(t);break;case"animation":s=this._invokeOne(function(r){return r.loadAnimation&&r.loadAnimation(t)});break;case"camera":s=this.loadCamera(t);break;default:if(s=this._invokeOne(function(r){return r!=this&&r.getDependency&&r.getDependency(e,t)}),!s)throw new Error("Unknown type: "+e);break}this.cache.add(n,s)}return s}getDependencies(e){let t=this.cache.get(e);if(!t){let n=this,s=this.json[e+(e==="mesh"?"es":"s")]||[];t=Promise.all(s.map(function(r,o){return n.getDependency(e,o)})),this.cache.add(e,t)}return t}loadBuffer(e){let t=this.json.buffers[e],n=this.fileLoader;if(t.type&&t.type!=="arraybuffer")throw new Error("THREE.GLTFLoader: "+t.type+" buffer type is not supported.");if(t.uri===void 0&&e===0)return Promise.resolve(this.extensions[ut.KHR_BINARY_GLTF].body);let s=this.options;return new Promise(function(r,o){n.load(Fi.resolveURL(t.uri,s.path),r,void 0,function(){o(new Error('THREE.GLTFLoader: Failed to load buffer "'+t.uri+'".'))})})}loadBufferView(e){let t=this.json.bufferViews[e];return this.getDependency("buffer",t.buffer).then(function(n){let s=t.byteLength||0,r=t.byteOffset||0;return n.slice(r,r+s)})}loadAccessor(e){let t=this,n=this.json,s=this.json.accessors[e];if(s.bufferView===void 0&&s.sparse===void 0){let o=td[s.type],a=Gr[s.componentType],c=s.normalized===!0,l=new a(s.count*o);return Promise.resolve(new Nt(l,o,c))}let r=[];return s.bufferView!==void 0?r.push(this.getDependency("bufferView",s.bufferView)):r.push(null),s.sparse!==void 0&&(r.push(this.getDependency("bufferView",s.sparse.indices.bufferView)),r.push(this.getDependency("bufferView",s.sparse.values.bufferView))),Promise.all(r).then(function(o){let a=o[0],c=td[s.type],l=Gr[s.componentType],h=l.BYTES_PER_ELEMENT,d=h*c,u=s.byteOffset||0,f=s.bufferView!==void 0?n.bufferViews[s.bufferView].byteStride:void 0,p=s.normalized===!0,_,g;if(f&&f!==d){let m=Math.floor(u/f),v="InterleavedBuffer:"+s.bufferView+":"+s.componentType+":"+m+":"+s.count,M=t.cache.get(v);M||(_=new l(a,m*f,s.count*f/h),M=new br(_,f/h),t.cache.add(v,M)),g=new Mr(M,c,u%f/h,p)}else a===null?_=new l(s.count*c):_=new l(a,u,s.count*c),g=new Nt(_,c,p);if(s.sparse!==void 0){let m=td.SCALAR,v=Gr[s.sparse.indices.componentType],M=s.sparse.indices.byteOffset||0,b=s.sparse.values.byteOffset||0,S=new v(o[1],M,s.sparse.count*m),T=new l(o[2],b,s.sparse.count*c);a!==null&&(g=new Nt(g.array.slice(),g.itemSize,g.normalized)),g.normalized=!1;for(let y=0,w=S.length;y<w;y++){let F=S[y];if(g.setX(F,T[y*c]),c>=2&&g.setY(F,T[y*c+1]),c>=3&&g.setZ(F,T[y*c+2]),c>=4&&g.setW(F,T[y*c+3]),c>=5)throw new Error("THREE.GLTFLoader: Unsupported itemSize in sparse BufferAttribute.")}g.normalized=p}return g})}loadTexture(e){let t=this.json,n=this.options,r=t.textures[e].source,o=t.images[r],a=this.textureLoader;if(o.uri){let c=n.manager.getHandler(o.uri);c!==null&&(a=c)}return this.loadTextureImage(e,r,a)}loadTextureImage(e,t,n){let s=this,r=this.json,o=r.textures[e],a=r.images[t],c=(a.uri||a.bufferView)+":"+o.sampler;if(this.textureCache[c])return this.textureCache[c];let l=this.loadImageSource(t,n).then(function(h){h.flipY=!1,h.name=o.name||a.name||"",h.name===""&&typeof a.uri=="string"&&a.uri.startsWith("data:image/")===!1&&(h.name=a.uri);let u=(r.samplers||{})[o.sampler]||{};return h.magFilter=cg[u.magFilter]||Vt,h.minFilter=cg[u.minFilter]||Wn,h.wrapS=hg[u.wrapS]||Ji,h.wrapT=hg[u.wrapT]||Ji,h.generateMipmaps=!h.isCompressedTexture&&h.minFilter!==Dt&&h.minFilter!==Vt,s.associations.set(h,{textures:e}),h}).catch(function(){return null});return this.textureCache[c]=l,l}loadImageSource(e,t){let n=this,s=this.json,r=this.options;if(this.sourceCache[e]!==void 0)return this.sourceCache[e].then(u=>u.clone());let o=s.images[e],a=self.URL||self.webkitURL,c=o.uri||"",l=!1,h;if(t.isKTX2Loader===!0&&o.bufferView!==void 0)h=n.getDependency("bufferView",o.bufferView).then(function(u){return new Promise(function(f,p){t.parse(u,f,p)})});else{if(o.bufferView!==void 0)c=n.getDependency("bufferView",o.bufferView).then(function(u){l=!0;let f=new Blob([u],{type:o.mimeType});return c=a.createObjectURL(f),c});else if(o.uri===void 0)throw new Error("THREE.GLTFLoader: Image "+e+" is missing URI and bufferView");h=Promise.resolve(c).then(function(u){return new Promise(function(f,p){let _=f;t.isImageBitmapLoader===!0&&(_=function(g){let m=new Wt(g);m.needsUpdate=!0,f(m)}),t.load(Fi.resolveURL(u,r.path),_,void 0,p)})})}let d=h.then(function(u){return l===!0&&a.revokeObjectURL(c),gi(u,o),u.userData.mimeType=o.mimeType||NS(o.uri),u}).catch(function(u){throw console.error("THREE.GLTFLoader: Couldn't load texture",c),u});return this.sourceCache[e]=d,d}assignTexture(e,t,n,s){let r=this;return this.getDependency("texture",n.index).then(function(o){if(!o)return null;if(n.texCoord!==void 0&&n.texCoord>0&&(o=o.clone(),o.channel=n.texCoord),r.extensions[ut.KHR_TEXTURE_TRANSFORM]){let a=n.extensions!==void 0?n.extensions[ut.KHR_TEXTURE_TRANSFORM]:void 0;if(a){let c=r.associations.get(o);o=r.extensions[ut.KHR_TEXTURE_TRANSFORM].extendTexture(o,a),r.associations.set(o,c)}}return s!==void 0&&(o.colorSpace=s),e[t]=o,o})}assignFinalMaterial(e){let t=e.geometry,n=e.material,s=t.attributes.tangent===void 0,r=t.attributes.color!==void 0,o=t.attributes.normal===void 0;if(e.isPoints){let a="PointsMaterial:"+n.uuid,c=this.cache.get(a);c||(c=new Tr,en.prototype.copy.call(c,n),c.color.copy(n.color),c.map=n.map,c.sizeAttenuation=!1,this.cache.add(a,c)),n=c}else if(e.isLine){let a="LineBasicMaterial:"+n.uuid,c=this.cache.get(a);c||(c=new es,en.prototype.copy.call(c,n),c.color.copy(n.color),c.map=n.map,this.cache.add(a,c)),n=c}if(s||r||o){let a="ClonedMaterial:"+n.uuid+":";s&&(a+="derivative-tangents:"),r&&(a+="vertex-colors:"),o&&(a+="flat-shading:");let c=this.cache.get(a);c||(c=n.clone(),r&&(c.vertexColors=!0),o&&(c.flatShading=!0),s&&(c.normalScale&&(c.normalScale.y*=-1),c.clearcoatNormalScale&&(c.clearcoatNormalScale.y*=-1)),this.cache.add(a,c),this.associations.set(c,this.associations.get(n))),n=c}e.material=n}getMaterialType(){return Ls}loadMaterial(e){let t=this,n=this.json,s=this.extensions,r=n.materials[e],o,a={},c=r.extensions||{},l=[];if(c[ut.KHR_MATERIALS_UNLIT]){let d=s[ut.KHR_MATERIALS_UNLIT];o=d.getMaterialType(),l.push(d.extendParams(a,r,t))}else{let d=r.pbrMetallicRoughness||{};if(a.color=new Ge(1,1,1),a.opacity=1,Array.isArray(d.baseColorFactor)){let u=d.baseColorFactor;a.color.setRGB(u[0],u[1],u[2],_n),a.opacity=u[3]}d.baseColorTexture!==void 0&&l.push(t.assignTexture(a,"map",d.baseColorTexture,Ct)),a.metalness=d.metallicFactor!==void 0?d.metallicFactor:1,a.roughness=d.roughnessFactor!==void 0?d.roughnessFactor:1,d.metallicRoughnessTexture!==void 0&&(l.push(t.assignTexture(a,"metalnessMap",d.metallicRoughnessTexture)),l.push(t.assignTexture(a,"roughnessMap",d.metallicRoughnessTexture))),o=this._invokeOne(function(u){return u.getMaterialType&&u.getMaterialType(e)}),l.push(Promise.all(this._invokeAll(function(u){return u.extendMaterialParams&&u.extendMaterialParams(e,a)})))}r.doubleSided===!0&&(a.side=nn);let h=r.alphaMode||nd.OPAQUE;if(h===nd.BLEND?(a.transparent=!0,a.depthWrite=!1):(a.transparent=!1,h===nd.MASK&&(a.alphaTest=r.alphaCutoff!==void 0?r.alphaCutoff:.5)),r.normalTexture!==void 0&&o!==wn&&(l.push(t.assignTexture(a,"normalMap",r.normalTexture)),a.normalScale=new xe(1,1),r.normalTexture.scale!==void 0)){let d=r.normalTexture.scale;a.normalScale.set(d,d)}if(r.occlusionTexture!==void 0&&o!==wn&&(l.push(t.assignTexture(a,"aoMap",r.occlusionTexture)),r.occlusionTexture.strength!==void 0&&(a.aoMapIntensity=r.occlusionTexture.strength)),r.emissiveFactor!==void 0&&o!==wn){let d=r.emissiveFactor;a.emissive=new Ge().setRGB(d[0],d[1],d[2],_n)}return r.emissiveTexture!==void 0&&o!==wn&&l.push(t.assignTexture(a,"emissiveMap",r.emissiveTexture,Ct)),Promise.all(l).then(function(){let d=new o(a);return r.name&&(d.name=r.name),gi(d,r),t.associations.set(d,{materials:e}),r.extensions&&Gs(s,d,r),d})}createUniqueName(e){let t=St.sanitizeNodeName(e||"");return t in this.nodeNamesUsed?t+"_"+ ++this.nodeNamesUsed[t]:(this.nodeNamesUsed[t]=0,t)}loadGeometries(e){let t=this,n=this.extensions,s=this.primitiveCache;function r(a){return n[ut.KHR_DRACO_MESH_COMPRESSION].decodePrimitive(a,t).then(function(c){return ug(c,a,t)})}let o=[];for(let a=0,c=e.length;a<c;a++){let l=e[a],h=LS(l),d=s[h];if(d)o.push(d.promise);else{let u;l.extensions&&l.extensions[ut.KHR_DRACO_MESH_COMPRESSION]?u=r(l):u=ug(new Pt,l,t),l.mode===Xn.TRIANGLE_STRIP?u=u.then(f=>ed(f,oa)):l.mode===Xn.TRIANGLE_FAN&&(u=u.then(f=>ed(f,Br))),s[h]={primitive:l,promise:u},o.push(u)}}return Promise.all(o)}loadMesh(e){let t=this,n=this.json,s=this.extensions,r=n.meshes[e],o=r.primitives,a=[];for(let c=0,l=o.length;c<l;c++){let h=o[c].material===void 0?CS(this.cache):this.getDependency("material",o[c].material);a.push(h)}return a.push(t.loadGeometries(o)),Promise.all(a).then(async function(c){let l=c.slice(0,c.length-1),h=c[c.length-1],d=[];for(let f=0,p=h.length;f<p;f++){let _=h[f],g=o[f],m,v=l[f];if(g.mode===Xn.TRIANGLES||g.mode===Xn.TRIANGLE_STRIP||g.mode===Xn.TRIANGLE_FAN||g.mode===void 0){let M=r.isSkinnedMesh===!0,b=_.hasAttribute("skinIndex")&&_.hasAttribute("skinWeight");M&&b===!1&&console.warn("THREE.GLTFLoader: Missing skinIndex or skinWeight attributes. Skinning disabled."),m=M&&b?new So(_,v):new Ut(_,v),m.isSkinnedMesh===!0&&m.normalizeSkinWeights()}else if(g.mode===Xn.LINES)m=new tn(_,v);else if(g.mode===Xn.LINE_STRIP)m=new Rs(_,v);else if(g.mode===Xn.LINE_LOOP)m=new Cs(_,v);else if(g.mode===Xn.POINTS)m=new Eo(_,v);else throw new Error("THREE.GLTFLoader: Primitive mode unsupported: "+g.mode);Object.keys(m.geometry.morphAttributes).length>0&&PS(m,r),m.name=t.createUniqueName(r.name||"mesh_"+e),gi(m,r),g.extensions&&Gs(s,m,g),t.assignFinalMaterial(m),d.push(m)}for(let f=0,p=d.length;f<p;f++)t.associations.set(d[f],{meshes:e,primitives:f});if(d.length===1)return r.extensions&&Gs(s,d[0],r),d[0];let u=new Zt;r.extensions&&Gs(s,u,r),t.associations.set(u,{meshes:e});for(let f=0,p=d.length;f<p;f++)u.add(d[f]);return u})}loadCamera(e){let t,n=this.json.cameras[e],s=n[n.type];if(!s){console.warn("THREE.GLTFLoader: Missing camera parameters.");return}return n.type==="perspective"?t=new Gt(kr.radToDeg(s.yfov),s.aspectRatio||1,s.znear||1,s.zfar||2e6):n.type==="orthographic"&&(t=new Ns(-s.xmag,s.xmag,s.ymag,-s.ymag,s.znear,s.zfar)),n.name&&(t.name=this.createUniqueName(n.name)),gi(t,n),Promise.resolve(t)}loadSkin(e){let t=this.json.skins[e],n=[];for(let s=0,r=t.joints.length;s<r;s++)n.push(this._loadNodeShallow(t.joints[s]));return t.inverseBindMatrices!==void 0?n.push(this.getDependency("accessor",t.inverseBindMatrices)):n.push(null),Promise.all(n).then(function(s){let r=s.pop(),o=s,a=[],c=[];for(let l=0,h=o.length;l<h;l++){let d=o[l];if(d){a.push(d);let u=new je;r!==null&&u.fromArray(r.array,l*16),c.push(u)}else console.warn('THREE.GLTFLoader: Joint "%s" could not be found.',t.joints[l])}return new wo(a,c)})}loadAnimation(e){let t=this.json,n=this,s=t.animations[e],r=s.name?s.name:"animation_"+e,o=[],a=[],c=[],l=[],h=[];for(let d=0,u=s.channels.length;d<u;d++){let f=s.channels[d],p=s.samplers[f.sampler],_=f.target,g=_.node,m=s.parameters!==void 0?s.parameters[p.input]:p.input,v=s.parameters!==void 0?s.parameters[p.output]:p.output;_.node!==void 0&&(o.push(this.getDependency("node",g)),a.push(this.getDependency("accessor",m)),c.push(this.getDependency("accessor",v)),l.push(p),h.push(_))}return Promise.all([Promise.all(o),Promise.all(a),Promise.all(c),Promise.all(l),Promise.all(h)]).then(function(d){let u=d[0],f=d[1],p=d[2],_=d[3],g=d[4],m=[];for(let M=0,b=u.length;M<b;M++){let S=u[M],T=f[M],y=p[M],w=_[M],F=g[M];if(S===void 0)continue;S.updateMatrix&&S.updateMatrix();let I=n._createAnimationTracks(S,T,y,w,F);if(I)for(let D=0;D<I.length;D++)m.push(I[D])}let v=new Wo(r,void 0,m);return gi(v,s),v})}createNodeMesh(e){let t=this.json,n=this,s=t.nodes[e];return s.mesh===void 0?null:n.getDependency("mesh",s.mesh).then(function(r){let o=n._getNodeRef(n.meshCache,s.mesh,r);return s.weights!==void 0&&o.traverse(function(a){if(a.isMesh)for(let c=0,l=s.weights.length;c<l;c++)a.morphTargetInfluences[c]=s.weights[c]}),o})}loadNode(e){let t=this.json,n=this,s=t.nodes[e],r=n._loadNodeShallow(e),o=[],a=s.children||[];for(let l=0,h=a.length;l<h;l++)o.push(n.getDependency("node",a[l]));let c=s.skin===void 0?Promise.resolve(null):n.getDependency("skin",s.skin);return Promise.all([r,Promise.all(o),c]).then(function(l){let h=l[0],d=l[1],u=l[2];u!==null&&h.traverse(function(f){f.isSkinnedMesh&&f.bind(u,DS)});for(let f=0,p=d.length;f<p;f++)h.add(d[f]);if(h.userData.pivot!==void 0&&d.length>0){let f=h.userData.pivot,p=d[0];h.pivot=new L().fromArray(f),h.position.x-=f[0],h.position.y-=f[1],h.position.z-=f[2],p.position.set(0,0,0),delete h.userData.pivot}return h})}_loadNodeShallow(e){let t=this.json,n=this.extensions,s=this;if(this.nodeCache[e]!==void 0)return this.nodeCache[e];let r=t.nodes[e],o=r.name?s.createUniqueName(r.name):"",a=[],c=s._invokeOne(function(l){return l.createNodeMesh&&l.createNodeMesh(e)});return c&&a.push(c),r.camera!==void 0&&a.push(s.getDependency("camera",r.camera).then(function(l){return s._getNodeRef(s.cameraCache,r.camera,l)})),s._invokeAll(function(l){return l.createNodeAttachment&&l.createNodeAttachment(e)}).forEach(function(l){a.push(l)}),this.nodeCache[e]=Promise.all(a).then(function(l){let h;if(r.isBone===!0?h=new Sr:l.length>1?h=new Zt:l.length===1?h=l[0]:h=new At,h!==l[0])for(let d=0,u=l.length;d<u;d++)h.add(l[d]);if(r.name&&(h.userData.name=r.name,h.name=o),gi(h,r),r.extensions&&Gs(n,h,r),r.matrix!==void 0){let d=new je;d.fromArray(r.matrix),h.applyMatrix4(d)}else r.translation!==void 0&&h.position.fromArray(r.translation),r.rotation!==void 0&&h.quaternion.fromArray(r.rotation),r.scale!==void 0&&h.scale.fromArray(r.scale);if(!s.associations.has(h))s.associations.set(h,{});else if(r.mesh!==void 0&&s.meshCache.refs[r.mesh]>1){let d=s.associations.get(h);s.associations.set(h,{...d})}return s.associations.get(h).nodes=e,h}),this.nodeCache[e]}loadScene(e){let t=this.extensions,n=this.json.scenes[e],s=this,r=new Zt;n.name&&(r.name=s.createUniqueName(n.name)),gi(r,n),n.extensions&&Gs(t,r,n);let o=n.nodes||[],a=[];for(let c=0,l=o.length;c<l;c++)a.push(s.getDependency("node",o[c]));return Promise.all(a).then(function(c){for(let h=0,d=c.length;h<d;h++){let u=c[h];u.parent!==null?r.add(og(u)):r.add(u)}let l=h=>{let d=new Map;for(let[u,f]of s.associations)(u instanceof en||u instanceof Wt)&&d.set(u,f);return h.traverse(u=>{let f=s.associations.get(u);f!=null&&d.set(u,f)}),d};return s.associations=l(r),r})}_createAnimationTracks(e,t,n,s,r){let o=[],a=e.name?e.name:e.uuid,c=[];function l(f){f.morphTargetInfluences&&c.push(f.name?f.name:f.uuid)}ls[r.path]===ls.weights?(l(e),e.isGroup&&e.children.forEach(l)):c.push(a);let h;switch(ls[r.path]){case ls.weights:h=Di;break;case ls.rotation:h=Ui;break;case ls.translation:case ls.scale:h=ts;break;default:switch(n.itemSize){case 1:h=Di;break;case 2:case 3:default:h=ts;break}break}let d=s.interpolation!==void 0?RS[s.interpolation]:Es,u=this._getArrayFromAccessor(n);for(let f=0,p=c.length;f<p;f++){let _=new h(c[f]+"."+ls[r.path],t.array,u,d);s.interpolation==="CUBICSPLINE"&&this._createCubicSplineTrackInterpolant(_),o.push(_)}return o}_getArrayFromAccessor(e){let t=e.array;if(e.normalized){let n=Rd(t.constructor),s=new Float32Array(t.length);for(let r=0,o=t.length;r<o;r++)s[r]=t[r]*n;t=s}return t}_createCubicSplineTrackInterpolant(e){e.createInterpolant=function(n){let s=this instanceof Ui?Ed:Oc;return new s(this.times,this.values,this.getValueSize()/3,n)},e.createInterpolant.isInterpolantFactoryMethodGLTFCubicSpline=!0}};function US(i,e,t){let n=e.attributes,s=new Qt;if(n.POSITION!==void 0){let a=t.json.accessors[n.POSITION],c=a.min,l=a.max;if(c!==void 0&&l!==void 0){if(s.set(new L(c[0],c[1],c[2]),new L(l[0],l[1],l[2])),a.normalized){let h=Rd(Gr[a.componentType]);s.min.multiplyScalar(h),s.max.multiplyScalar(h)}}else{console.warn("THREE.GLTFLoader: Missing min/max properties for accessor POSITION.");return}}else return;let r=e.targets;if(r!==void 0){let a=new L,c=new L;for(let l=0,h=r.length;l<h;l++){let d=r[l];if(d.POSITION!==void 0){let u=t.json.accessors[d.POSITION],f=u.min,p=u.max;if(f!==void 0&&p!==void 0){if(c.setX(Math.max(Math.abs(f[0]),Math.abs(p[0]))),c.setY(Math.max(Math.abs(f[1]),Math.abs(p[1]))),c.setZ(Math.max(Math.abs(f[2]),Math.abs(p[2]))),u.normalized){let _=Rd(Gr[u.componentType]);c.multiplyScalar(_)}a.max(c)}else console.warn("THREE.GLTFLoader: Missing min/max properties for accessor POSITION.")}}s.expandByVector(a)}i.boundingBox=s;let o=new Sn;s.getCenter(o.center),o.radius=s.min.distanceTo(s.max)/2,i.boundingSphere=o}function ug(i,e,t){let n=e.attributes,s=[];function r(o,a){return t.getDependency("accessor",o).then(function(c){i.setAttribute(a,c)})}for(let o in n){let a=Ad[o]||o.toLowerCase();a in i.attributes||s.push(r(n[o],a))}if(e.indices!==void 0&&!i.index){let o=t.getDependency("accessor",e.indices).then(function(a){i.setIndex(a)});s.push(o)}return ht.workingColorSpace!==_n&&"COLOR_0"in n&&console.warn(`THREE.GLTFLoader: Converting vertex colors from "srgb-linear" to "${ht.workingColorSpace}" not supported.`),gi(i,e),US(i,e,t),Promise.all(s).then(function(){return e.targets!==void 0?IS(i,e.targets,t):i})}var Ht=(i,e,t)=>new L(i,t,-e),zt=i=>Ht(i[0],i[1],i[2]),Vs=48,Ws=.12,fg=1.1,OS=1.8,FS=.34;function BS([i,e,t],n){let s=e/2+n,r=t/2+n,o=[];if(i==="rectangular"){let a=[[s,-r],[s,r],[-s,r],[-s,-r]],c=Vs/4;for(let l=0;l<4;l++)for(let h=0;h<c;h++){let d=h/c,u=a[l],f=a[(l+1)%4];o.push([u[0]*(1-d)+f[0]*d,u[1]*(1-d)+f[1]*d])}return[...o.slice(c/2),...o.slice(0,c/2)]}if(i==="oval"){for(let[a,c]of[[1,Vs/2+1],[-1,Vs/2-1]])for(let l=0;l<c;l++){let h=-Math.PI/2+Math.PI*l/(c-1);o.push([a*(Math.cos(h)*r+s-r),a*Math.sin(h)*r])}return[...o.slice(Vs/4),...o.slice(0,Vs/4)]}for(let a=0;a<Vs;a++){let c=a/Vs*2*Math.PI;o.push([Math.cos(c)*s,Math.sin(c)*s])}return o}function gg(i,e){let t=e&&e.clone().addScaledVector(i,-e.dot(i));if(!t||t.length()<.001){let n=[Math.abs(i.x),Math.abs(i.y),Math.abs(i.z)],s=n.indexOf(Math.min(...n));t=new L(+(s===0),+(s===1),+(s===2)).cross(i)}return t.normalize(),[t,i.clone().cross(t)]}var qn=(i,e,t,n,s)=>{let[r,o]=gg(e,t);return BS(n,s).map(([a,c])=>i.clone().addScaledVector(r,a).addScaledVector(o,c))};function Fc(i,e,t){let n=i[0].length,s=[],r=[],o=(h,d)=>{s.push(h.x,h.y,h.z),r.push(d.x,d.y,d.z)},a=(h,d,u,f,p,_,g,m)=>{o(h,p),o(d,_),o(u,g),o(h,p),o(u,g),o(f,m)},c=(h,d,u)=>{let f=h.map((p,_)=>{let g=h[(_+1)%n].clone().sub(h[(_+n-1)%n]),m=d[_].clone().sub(p);return g.cross(m).normalize().multiplyScalar(u?-1:1)});for(let p=0;p<n;p++){let _=(p+1)%n,g=f[p],m=f[_];t||(g=m=h[_].clone().sub(h[p]).cross(d[p].clone().sub(h[p])).normalize().multiplyScalar(u?-1:1)),u?a(h[p],d[p],d[_],h[_],g,g,m,m):a(h[p],h[_],d[_],d[p],g,m,m,g)}};for(let h=0;h+1<i.length;h++)c(i[h],i[h+1],!1),c(e[h],e[h+1],!0);for(let[h,d,u]of[[i[0],e[0],-1],[i[i.length-1],e[e.length-1],1]]){let f=h[1].clone().sub(h[0]).cross(d[0].clone().sub(h[0])).normalize();for(let p=0;p<n;p++){let _=(p+1)%n;u>0?a(h[p],h[_],d[_],d[p],f,f,f,f):a(h[p],d[p],d[_],h[_],f.clone().negate(),f,f,f)}}let l=new Pt;return l.setAttribute("position",new Tt(s,3)),l.setAttribute("normal",new Tt(r,3)),l}function kS(i,e){let t=zt(i.a),n=zt(i.b),s=zt(i.d).normalize();if(i.k==="elbow"){let c=zt(i.t).normalize(),l=s.clone().cross(c).normalize(),h=i.g*Math.PI/180,d=l.clone().cross(s),u=t.clone().addScaledVector(d,i.r),f=i.s[0]==="rectangular",p=f?12:i.n,_=h/(p-1)/2,g=[0,...Array.from({length:p-1},(M,b)=>_*(2*b+1)),h],m=f?[]:g.slice(1,-1).map((M,b)=>b+1),v=M=>g.map((b,S)=>{let T=S>0&&S<g.length-1,y=T?1/Math.cos(_):1,w=d.clone().negate().applyAxisAngle(l,b),F=u.clone().addScaledVector(w,i.r),I=qn(F,s.clone().applyAxisAngle(l,b),e.clone().applyAxisAngle(l,b),i.s,M);for(let D of I)D.addScaledVector(w,D.clone().sub(u).dot(w)*(y-1));return I});return[v(0),v(-Ws),m]}if(i.k==="flex"){let c=Math.max(2,Math.round(i.l/OS)),l=h=>Array.from({length:2*c+1},(d,u)=>qn(t.clone().lerp(n,u/(2*c)),s,e,i.s,h-(u%2?0:FS)));return[l(0),l(-Ws),Array.from({length:c},(h,d)=>2*d+1)]}let r=JSON.stringify(i.s)===JSON.stringify(i.o),o=r?[[0,i.s],[1,i.s]]:[[0,i.s],[.18,i.s],[.82,i.o],[1,i.o]],a=c=>o.map(([l,h])=>qn(t.clone().lerp(n,l),s,e,h,c));return[a(0),a(-Ws),r?[]:[1,2]]}var cs=(i,e)=>{let t=new Ut(i,e);return t.castShadow=!0,t},Id=(i,e)=>new Cs(new Pt().setFromPoints(i),e);function pg(i,e,t,n,s,r){let o=[-s/2,s/2].map(h=>i.clone().addScaledVector(e,h)),a=o.map(h=>qn(h,e,t,n,.22)),c=o.map(h=>qn(h,e,t,n,-Ws)),l=cs(Fc(a,c,n[0]!=="rectangular"),r.duct);for(let h of a)l.add(Id(h,r.seam));return l}var zS={flex:"flexible hose"};function _g(i,e,t=new Set){let n=new Zt,s=null,r=null;for(let o of i){if(o.l<1e-6||o.k==="cap"||o.k==="open end")continue;let a=zt(o.d).normalize(),[c]=gg(a,o.w?zt(o.w):s),[l,h,d]=kS(o,c),u=t.has(o.id),f=cs(Fc(l,h,o.s[0]!=="rectangular"&&o.k!=="flex"),u?e.bars:e.duct);f.userData={label:zS[o.k]||o.k,part:o.id};for(let v of d)f.add(Id(l[v],u?e.barLine:e.seam));o.s[0]==="rectangular"&&f.add(new tn(new Tn(f.geometry,30),e.seam)),n.add(f);let p=Math.min(o.l,r?r.l:o.l),_=Math.min(fg,r?p/3:o.l/2),g=r?zt(o.a):zt(o.a).addScaledVector(a,Math.min(.8,o.l/2));_>.15&&n.add(pg(g,a,c,o.s,_,e));let m=N.scene.duct.stock;if(o.k==="straight"&&o.l>m+6)for(let v=m;o.l-v>3;v+=m)n.add(pg(zt(o.a).addScaledVector(a,v),a,c,o.s,fg,e));s=o.k==="elbow"?c.clone().applyAxisAngle(a.clone().cross(zt(o.t)).normalize(),o.g*Math.PI/180):c,r=o}return n}function Bc(i,e,t,n,s){let r=e.clone().sub(i).normalize(),o=new L(1,0,0),a=[i,e];return cs(Fc(a.map(c=>qn(c,r,o,t,n)),a.map(c=>qn(c,r,o,t,n-Ws*2)),t[0]!=="rectangular"),s)}function HS(i,e){let t=[[.001,i[0][1]],...i,[.001,i[i.length-1][1]]].map(([s,r])=>new xe(s,r)),n=cs(new ko(t,48),e.duct);return n.add(new tn(new Tn(n.geometry,32),e.seam)),n}function mg(i,e,t,n){let s=cs(new Pi(i[1]-i[0],t[1]-t[0],e[1]-e[0]),n.steel);return s.position.set((i[0]+i[1])/2,(t[0]+t[1])/2,-(e[0]+e[1])/2),s.add(new tn(new Tn(s.geometry,30),n.seam)),s}function GS(i,e,t){let n=new Zt,s=N.faces[i.face],[,r,o]=s?s.plane:[0,0,0],a=N.scene.duct.stub,c=Math.max(e[1],e[2])/2,l=new Pi(2*c+10,.5,2*c+10),h=l.attributes.position;for(let v=0;v<h.count;v++)h.setY(v,h.getY(v)+.85+h.getX(v)*r-h.getZ(v)*o);l.computeVertexNormals();let d=cs(l,t.steel);d.add(new tn(new Tn(l,30),t.seam)),n.add(d);let u=c*Math.hypot(r,o),f=new L(0,1,0),p=v=>new L(0,v,0),_=e[0]==="round"?new L(1,0,0):null,g=(v,M,b,S)=>{let T=cs(Fc([qn(p(v),f,_,e,b),qn(p(M),f,_,e,S)],[qn(p(v),f,_,e,-Ws),qn(p(M),f,_,e,-Ws)],!0),t.duct);return T.add(Id(qn(p(M),f,_,e,S),t.seam)),T},m=e[1]/2;return n.add(g(-u-.2,Math.max(a*.42,u+1.2),1.6,.3),g(-u,a,.12,.12),g(a-1.6,a-.9,m*.42,m*.42)),n.add(HS([[m*1.85,a+1.1],[m*1.85,a+2.1],[m*.3,a+4.6],[m*.3,a+4.75]],t)),n.position.copy(Ht(i.at[0],i.at[1],i.at[2]-a)),n}function VS(i,e,t){let n=new Zt,s=zt(i.d).normalize(),r=Math.abs(i.wide?i.wide[2]:0)>.5,o=(r?e[2]:e[1])/2,a=(r?e[1]:e[2])/2,c=(N.scene.duct.flange||e[1]+4)/2,l=Math.max(o+1,e[0]==="round"?c-1.2:o+1),h=a+2.6,d=Math.max(c,o+2),u=Math.max(c,a+2),f=a+1.2,p=-a-1;n.add(mg([-d,d],[.02,.55],[-u,u],t));let _=new Li([[.55,f],[1.2,f],[h,p+1.6],[h,p],[h-.35,p],[h-.35,p+1.5],[.9,f-.5],[.55,f-.5]].map(([b,S])=>new xe(b,S))),g=new Li([[.55,f-.02],[1.15,f-.02],[h-.02,p+1.58],[h-.02,p],[.55,p]].map(([b,S])=>new xe(b,S))),m=(b,S,T)=>{let y=new Ps(b,{depth:S,bevelEnabled:!1});y.applyMatrix4(new je().set(0,0,1,T,0,1,0,0,-1,0,0,0,0,0,0,1));let w=cs(y,t.steel);w.add(new tn(new Tn(y,30),t.seam)),n.add(w)};m(_,2*l,-l),m(g,.25,-l+.01),m(g,.25,l-.26);let v=mg([-o,o],[.85,1.05],[-a,a-.1],t);v.rotation.x=-.35,n.add(v);let M=s.clone().cross(new L(0,1,0));return n.applyMatrix4(new je().makeBasis(M,new L(0,1,0),s.clone().negate()).setPosition(zt(i.at))),n}var xg=(i,e,t)=>i.kind===null?new Zt:i.kind==="roof"?GS(i,e,t):VS(i,e,t);var WS={light:{top:"#f6f1e8",foot:"#e9e1d3",edge:"#5b5144",timber:"#7a5a30",sky:1.9,sun:1.15,fill:.55,zone:"#12646b",steel:"#b7c1c9",duct:"#ffffff"},dark:{top:"#2b2925",foot:"#1d1c19",edge:"#17150f",timber:"#4a3413",sky:1.05,sun:.95,fill:.3,zone:"#63c5cb",steel:"#aab3ba",duct:"#d0d0d0"}};function yg(i,e,t){let n=document.createElement("canvas");n.width=i,n.height=e,t(n.getContext("2d"),i,e);let s=new Ro(n);return s.colorSpace=Ct,s}var $S=(i,e,t)=>yg(128,128,(n,s,r)=>{n.fillStyle=e,n.fillRect(0,0,s,r);let o=n.createLinearGradient(0,0,s,0);[[0,t],[.18,e],[.36,i],[.46,"#fff"],[.56,i],[.8,e],[1,t]].forEach(c=>o.addColorStop(...c)),n.globalAlpha=.85,n.fillStyle=o,n.fillRect(0,0,s,r);let a=n.createLinearGradient(0,0,0,r);a.addColorStop(0,"rgba(255,255,255,.55)"),a.addColorStop(.45,"rgba(255,255,255,0)"),a.addColorStop(1,"rgba(40,48,56,.45)"),n.globalAlpha=1,n.fillStyle=a,n.fillRect(0,0,s,r)}),vg=i=>yg(8,256,(e,t,n)=>{let s=e.createLinearGradient(0,0,0,n);s.addColorStop(0,i.top),s.addColorStop(1,i.foot),e.fillStyle=s,e.fillRect(0,0,t,n)}),Vr=8,hs={count:{value:0},from:{value:Array.from({length:Vr},()=>new L)},to:{value:Array.from({length:Vr},()=>new L)},radius:{value:0}};function bg(i,e){let t=(i||[]).filter(n=>n.k==="straight"&&n.s[0]==="round").slice(0,Vr);hs.count.value=t.length,t.forEach((n,s)=>{hs.from.value[s].copy(e(n.a)),hs.to.value[s].copy(e(n.b)),hs.radius.value=n.s[1]/2-.05})}var XS=["#include <begin_vertex>",`#include <begin_vertex>
vPlace = (modelMatrix * vec4(position, 1.0)).xyz;`],qS=i=>i.match(/\w\w/g).map(e=>(parseInt(e,16)/255).toFixed(3)).join(",");function fa(i,{cut:e,pierced:t,bars:n}){return i.onBeforeCompile=s=>{s.vertexShader=s.vertexShader.replace("#include <common>",`#include <common>
varying vec3 vPlace;`).replace(...XS);let r=`varying vec3 vPlace;
`,o="",a="",c="";t&&(Object.assign(s.uniforms,{holeCount:hs.count,holeFrom:hs.from,holeTo:hs.to,holeRadius:hs.radius}),r+=`uniform int holeCount; uniform vec3 holeFrom[${Vr}]; uniform vec3 holeTo[${Vr}]; uniform float holeRadius;
`,o=`for (int i = 0; i < ${Vr}; i++) { if (i >= holeCount) break; vec3 run = holeTo[i] - holeFrom[i], off = vPlace - holeFrom[i]; float t = dot(off, run) / dot(run, run); if (t > -0.01 && t < 1.02 && length(off - run * t) < holeRadius) discard; }
`),n&&(a=`float bar = step(0.5, fract((vPlace.x + vPlace.y - vPlace.z) / 3.6)); diffuseColor.rgb = mix(vec3(0.54, 0.033, 0.011), vec3(1.0), bar);
`),e&&(c=`
if (!gl_FrontFacing) gl_FragColor = vec4(${qS(e)}, 1.0);`),s.fragmentShader=s.fragmentShader.replace("#include <common>",`#include <common>
`+r).replace("#include <clipping_planes_fragment>",`#include <clipping_planes_fragment>
`+o).replace("#include <color_fragment>",`#include <color_fragment>
`+a).replace("#include <colorspace_fragment>","#include <colorspace_fragment>"+c)},i.customProgramCacheKey=()=>[e||"",+!!t,+!!n].join(),i}function YS(i,e){let t=s=>{let{color:r,...o}=i,a=fa(new Rr(i),{cut:e,pierced:s});return a.quick=fa(new wn({...o,color:r,vertexColors:!0}),{cut:e,pierced:s}),a},n=t(!1);return i.transparent||(n.pierced=t(!0)),n}function Mg(i){let e={clippingPlanes:i,side:An,polygonOffset:!0,polygonOffsetFactor:.4,polygonOffsetUnits:1},t=r=>new es({color:r,clippingPlanes:i}),n={steel:fa(new Ho({...e,color:"#b7c1c9",specular:"#5c6166",shininess:26}),{cut:"#7f8e9a"}),duct:fa(new Go({...e,matcap:$S("#dfe7ee","#a3b1bd","#5e6c78")}),{cut:"#6c7a86"}),bars:fa(new Rr({...e,polygonOffsetFactor:0,polygonOffsetUnits:-2}),{cut:"#8e1f0c",bars:!0}),zone:new wn({...e,side:nn,color:"#12646b",transparent:!0,opacity:.1,depthWrite:!1}),ghost:new wn({...e,side:nn,color:"#12646b",transparent:!0,opacity:.22,depthWrite:!1}),seam:t("#566472"),edge:t("#5b5144"),timber:t("#7a5a30"),zoneLine:t("#12646b"),barLine:t("#8e1f0c"),strong:t("#24272b"),paint:{}};for(let[r,[o,a,c,l,h,d]]of Object.entries(N.materials)){let u=l?n.steel:r==="zone"?n.zone:YS({...e,color:o,transparent:h<1,opacity:h},h<1?null:c);n.paint[r]={material:u,line:d?r==="zone"?n.zoneLine:l?n.seam:a==="#7a5a30"?n.timber:n.edge:null,glass:h<1&&r!=="zone"}}let s=Object.values(n.paint).filter(r=>!r.glass&&r.material!==n.zone).map(r=>r.material);return n.solid=[...new Set([n.steel,n.duct,n.bars,...s.flatMap(r=>[r,r.quick,r.pierced,r.pierced&&r.pierced.quick].filter(Boolean))])],n}function Sg(i,e){let t=WS[e?"dark":"light"];return i.edge.color.set(t.edge),i.timber.color.set(t.timber),i.zoneLine.color.set(t.zone),i.zone.color.set(t.zone),i.ghost.color.set(t.zone),i.steel.color.set(t.steel),i.duct.color.set(t.duct),t}var Pd={square:"square to the wall",ceiling:"under the joists",along:"beside the duct",outside:"at the cap",room:"in the room"},wg=(i,e)=>i!=="outside"||e&&e.end&&e.end.kind!==null?Pd[i]:"outside",kc=i=>i&&i.kind==="roof"?i.at[2]+5:null;function $s(i,e,t,n,s=.06){let r=e.clone().normalize(),o=new L(0,1,0),a=Math.tan(t*Math.PI/360),c=r.clone().negate(),l=c.clone().cross(o).normalize(),h=l.clone().cross(c),d=i.reduce((f,p)=>f.add(p),new L).multiplyScalar(1/i.length),u=400;for(let f=0;f<50;f++){let p=d.clone().addScaledVector(r,u),_=[1e9,1e9],g=[-1e9,-1e9];for(let M of i){let b=M.clone().sub(p),S=Math.max(1,b.dot(c));[b.dot(l)/(S*a*n),b.dot(h)/(S*a)].forEach((y,w)=>{_[w]=Math.min(_[w],y),g[w]=Math.max(g[w],y)})}let m=Math.max(g[0]-_[0],g[1]-_[1])/(2-4*s),v=a*u;d.addScaledVector(l,(_[0]+g[0])/2*v*n).addScaledVector(h,(_[1]+g[1])/2*v),u*=1+(m-1)*.8}return{p:d.clone().addScaledVector(r,u),t:d,f:t,s:[0,0]}}var Wr=(i,e)=>{let t=[];for(let n of[i[0],e[0]])for(let s of[i[1],e[1]])for(let r of[i[2],e[2]])t.push(Ht(n,s,r));return t};function Ld(i){let n=(a,c)=>76+(a-76)*340/(340+c),s=Object.values(N.faces).filter(a=>a.kind==="roof").map(a=>a.plane[0]+a.plane[2]*-20+Math.max(0,a.plane[1]*N.scene.width)),r=N.scene.ceiling+14;s.length&&(r=Math.max(r,Math.min(n(Math.max(...s),-20),N.scene.ceiling+34)));let o=i&&kc(i.end);return o&&(r=Math.max(r,n(o,i.end.at[1])+4)),Math.min(r,N.scene.ceiling+90)}function Tg(i,e,{width:t,height:n,grid:s}){let{scene:r}=N,o=t/n,a=e.x,c=r.cook.height+e.h,l=e.end;if(i==="square"){let $=(t/2-s.left)/s.s,J=2*Math.atan(n/(2*s.s*340))*180/Math.PI,P=s.top-(n/2-s.pad)/s.s,k=1/Math.tan(J*Math.PI/360);return{p:Ht($,-340,76),t:Ht($,0,76),f:J,s:[0,k*(P-76)/340]}}let h=a<=r.width/2+12?1:-1,d=Math.max(N.cut.front,-40),u=kc(l)||r.ceiling+26;if(i==="ceiling")return $s(Wr([a-32,d,r.ceiling-12],[a+32,0,Math.min(u,r.ceiling+24)]),Ht(.16*h,-1,-.34),42,o);if(i==="near")return $s(Wr([a-r.hood.width/2-14,-r.hood.depth,c-14],[a+r.hood.width/2+14,0,r.ceiling]),Ht(.42*h,-1,.12),38,o);if(i==="room")return $s([...Wr([-6,N.cut.front,0],[r.width+6,0,r.ceiling+10]),Ht(a,-9,u)],Ht(.42*h,-1,.16),34,o,.02);let f=e.parts?e.parts.flatMap(I=>[I.a,I.b]):e.wanted||[[a,-9,c+r.hood.body],[a,-9,r.ceiling+10]],p=r.duct.section[1]+2,_=[0,1,2].map(I=>Math.min(...f.map(D=>D[I]))-p),g=[0,1,2].map(I=>Math.max(...f.map(D=>D[I]))+p);if(i==="along"||!l||l.kind===null)return i==="outside"?$s(Wr([0,r.wall,10],[r.width,r.wall,r.ceiling]),Ht(-.5,1,.2),34,o):$s(Wr(_,g),Ht(-.5*h,-1,.22),36,o);let[m,v,M]=l.at,b=m>r.width/2?-.55:.55;if(l.kind==="roof")return $s(Wr([m-36,v-12,M-12],[m+36,v+24,u]),Ht(b,v>-r.depth/2?1:-1,.55),32,o);let S=Ht(...l.d),T=S.clone().cross(new L(0,1,0)),y=Ht(m,v,M),w=[[-44,-30],[44,-30],[-44,28],[44,28]].map(([I,D])=>y.clone().addScaledVector(T,I).add(new L(0,D,0))),F=Math.abs(T.x)>.5?Math.sign(b)*Math.sign(T.x):1;return $s(w,S.clone().addScaledVector(T,.6*F).add(new L(0,.22,0)),34,o)}var $r=4,Nd=40,zc=6,jS=.7,Eg=12,Dd=[[-.25,-.25],[.25,.25],[.25,-.25],[-.25,.25]];function Ag(){let i=document.createElement("canvas").getContext("webgl2"),e=i&&i.getExtension("WEBGL_debug_renderer_info");if(!e)return!1;let t=i.getParameter(e.UNMASKED_RENDERER_WEBGL),n=i.getExtension("WEBGL_lose_context");return n&&n.loseContext(),/swiftshader|llvmpipe|softpipe|software|basic render/i.test(t)}function KS(i,{sky:e,fill:t,suns:n}){let s=.5*i.y+.5,r=new Ge().lerpColors(e.groundColor,e.color,s).multiplyScalar(e.intensity);r.add(t.color.clone().multiplyScalar(t.intensity));for(let o of n){let a=o.position.clone().sub(o.target.position).normalize(),c=Math.max(0,i.dot(a))*o.intensity;r.add(o.color.clone().multiplyScalar(c))}return r.multiplyScalar(1/Math.PI)}function Rg(i,e){let{normal:t}=i.attributes,n=new Float32Array(t.count*3),s=new Map,r=new L;for(let o=0;o<t.count;o++){r.fromBufferAttribute(t,o);let a=`${Math.round(r.x*200)},${Math.round(r.y*200)},${Math.round(r.z*200)}`;s.has(a)||s.set(a,KS(r.clone().normalize(),e).toArray()),n.set(s.get(a),o*3)}i.setAttribute("color",new Nt(n,3))}function Cg(i,e,{width:t,height:n}){let s=new Qt;for(let l of i)l.updateWorldMatrix(!0,!0),s.expandByObject(l);if(s.isEmpty())return{x:0,y:0,w:0,h:0};let r=[1/0,1/0],o=[-1/0,-1/0];for(let l=0;l<8;l++){let h=new L(l&1?s.max.x:s.min.x,l&2?s.max.y:s.min.y,l&4?s.max.z:s.min.z).project(e);if(!(h.z>-1&&h.z<1))return null;[(h.x+1)/2*t,(h.y+1)/2*n].forEach((d,u)=>{r[u]=Math.min(r[u],d),o[u]=Math.max(o[u],d)})}let a=Math.max(0,Math.floor(r[0]-zc)),c=Math.max(0,Math.floor(r[1]-zc));return{x:a,y:c,w:Math.max(0,Math.min(t,Math.ceil(o[0]+zc))-a),h:Math.max(0,Math.min(n,Math.ceil(o[1]+zc))-c)}}var ZS=(i,e)=>{let t=Math.min(i.x,e.x),n=Math.min(i.y,e.y);return{x:t,y:n,w:Math.max(i.x+i.w,e.x+e.w)-t,h:Math.max(i.y+i.h,e.y+e.h)-n}},JS=(i,e)=>i.x+i.w<e.x||e.x+e.w<i.x||i.y+i.h<e.y||e.y+e.h<i.y;function Ig(i,e,{width:t,height:n}){if(!i||!e)return null;let s=(JS(i,e)?[i,e]:[ZS(i,e)]).filter(r=>r.w>0&&r.h>0);return s.reduce((r,o)=>r+o.w*o.h,0)>jS*t*n?null:s}function QS({top:i,foot:e},t,{height:n},{x:s,y:r,w:o,h:a}){let c=new Ge(i),l=new Ge(e),h=Math.ceil(n/Nd),d=(u,f)=>Math.round((c[f]+(l[f]-c[f])*u)*255)/255;c.convertLinearToSRGB(),l.convertLinearToSRGB();for(let u=0;u<Nd;u++){let f=Math.max(r,u*h),p=Math.min(r+a,(u+1)*h),_=1-(u+.5)/Nd;p<=f||(t.setScissor(s,f,o,p-f),t.setClearColor(new Ge().setRGB(d(_,"r"),d(_,"g"),d(_,"b"),Ct)),t.clear(!0,!1,!1))}}function Ud(i,e,t,n,s,r){i.setScissorTest(!0),i.autoClear=!1;for(let o of n)QS(s,i,r,o),i.setScissor(o.x,o.y,o.w,o.h),i.clear(!1,!0,!0),i.render(e,t);i.setScissorTest(!1),i.autoClear=!0}function Pg(i,e,{shade:t,jitter:n,tint:s}){let r=document.createElement("canvas"),o=r.getContext("2d"),a=0;r.className="rest",r.hidden=!0,r.setAttribute("aria-hidden","true"),e.insertBefore(r,i.domElement.nextSibling);let c=i.getContext(),l=i.domElement,h=f=>{o.globalAlpha=f,o.drawImage(l,0,0)},d=()=>{r.width=l.width,r.height=l.height,r.style.width=l.style.width,r.style.height=l.style.height};function u(f,p,_,g,m){let v=Math.ceil(m.width/$r);n(Dd[f]),Ud(i,_,g,[{x:p*v,y:0,w:v,h:m.height}],s(),m),n([0,0]),p===$r-1&&h(1/(f+1))}return{end(){a++,r.hidden=!0},begin(f,p,_){let g=++a;d(),h(1),r.hidden=!1,t();let m=v=>{if(g!==a||v===$r*Dd.length)return;u(Math.floor(v/$r),v%$r,f,p,_);let M=c.fenceSync(c.SYNC_GPU_COMMANDS_COMPLETE,0);c.flush();let b=()=>{if(!(g!==a||c.getSyncParameter(M,c.SYNC_STATUS)===c.SIGNALED)){setTimeout(b,Eg);return}c.deleteSync(M),m(v+1)};setTimeout(b,Eg)};m(0)},now(f,p,_){return a++,d(),t(),Dd.forEach((g,m)=>{for(let v=0;v<$r;v++)u(m,v,f,p,_)}),r.hidden=!1,r}}}var Od=1/.0254,ew=450,Fd={BOARD:"wall and ceiling board",FRAMING:"framing",SKIN:"outer skin",ROOF:"roof",KITCHEN:"kitchen",HOOD:"hood",COVER:"chimney cover",DUCT:"duct",ZONES:"clearances",BEYOND:"beyond the wall"};function Lg(i,e,t){let n=Ag(),s=[0,0],r=new Cc({antialias:!n,preserveDrawingBuffer:!0});r.shadowMap.enabled=!0,r.shadowMap.type=Ds,r.toneMapping=Vn,r.domElement.tabIndex=-1,r.domElement.setAttribute("aria-hidden","true"),i.prepend(r.domElement);let o=new vo,a=new Gt(30,1,4,1800),c=[0,0],l=a.updateProjectionMatrix.bind(a);a.updateProjectionMatrix=()=>{l(),a.projectionMatrix.elements[8]=c[0]+s[0],a.projectionMatrix.elements[9]=c[1]+s[1],a.projectionMatrixInverse.copy(a.projectionMatrix).invert()};let h=new Nc(a,r.domElement);h.enableDamping=!1,h.maxDistance=900,h.minDistance=16;let d=new Xo("#fffdf8","#d8ccb9",1.6),u=new is("#fff7ea",1.2),f=new Ko("#fff",.25),p=new is("#fff7ea",.5);u.shadow.mapSize.set(1024,1024),p.position.set(-80,200,-300);function _(){let{width:x}=N.scene,C=Math.max(130,x*.8);u.position.set(x+6,250,230),u.target.position.set(x/2,60,0),Object.assign(u.shadow.camera,{left:-C,right:C,top:140,bottom:-140,near:10,far:700}),u.shadow.camera.updateProjectionMatrix(),u.target.updateMatrixWorld()}u.shadow.bias=-6e-4,u.shadow.normalBias=.5,u.shadow.radius=4,u.shadow.autoUpdate=!1,o.add(d,u,u.target,f,p);let g=new gn(new L(0,0,1),1e4),m=Mg([g]),v=Object.fromEntries(["fixed","hood","cover","cook","run","clash","keep"].map(x=>[x,new Zt]));o.add(v.fixed,v.hood,v.cover,v.cook,v.run,v.clash,v.keep);let M=new Map,b=Object.fromEntries(Object.keys(Fd).map(x=>[x,!0])),S=[],T=[],y={},w={},F={},I=[],D=0,$=null,J=!1,P="square",k=null,re=0,Y=0,me=!0,se=null,ce=null,ue=null,Pe={sky:d,fill:f,suns:[u,p]};function ne(x){if(x&&se!==Pe.sky.intensity){for(let C of T)C.userData.full.some(V=>V.quick)&&Rg(C.geometry,Pe);se=Pe.sky.intensity}for(let C of T)C.material=x?C.userData.quick:C.userData.full;u.castShadow=!x}let H=Pg(r,i,{tint:()=>ue,shade:()=>{me=!0,ne(!1),u.shadow.needsUpdate=!0},jitter:([x,C])=>{s=[x*2/k.width,C*2/k.height],a.updateProjectionMatrix()}}),le=()=>n?H.now(o,a,k):(u.shadow.needsUpdate=!0,r.render(o,a),r.domElement),we=()=>{if(D=0,clearTimeout(Y),!n)r.render(o,a);else{H.end(),ne(!0),Y=setTimeout(()=>H.begin(o,a,k),ew);let x=k&&Cg([v.hood,v.cover,v.cook,v.run,v.clash,v.keep,...I],a,k),C=!me&&k&&Ig(ce,x,k);k&&Ud(r,o,a,C||[{x:0,y:0,w:k.width,h:k.height}],ue,k),ce=x}me=!1,t.drawn()};function Ue(){let x=r.getContext(),C=new Uint8Array(4);u.castShadow=!1,r.render(o,a),x.readPixels(0,0,1,1,x.RGBA,x.UNSIGNED_BYTE,C);let V=performance.now();r.render(o,a),x.readPixels(0,0,1,1,x.RGBA,x.UNSIGNED_BYTE,C),n=performance.now()-V>60,u.castShadow=!n,n&&Ee()}let Se=()=>{D||(D=requestAnimationFrame(we))},Oe=()=>{me=!0,Se()},ct=()=>{u.shadow.needsUpdate=!0};function Xe(x,C){let[V,W,ie,fe,te]=N.pieces[x],X=m.paint[C.material]||m.paint.plaster,pe=X.line===m.timber,A=new Ut(C.geometry,X.material);A.name=x,A.userData={label:fe,solid:ie,layer:V,paint:X.material},A.castShadow=!X.glass&&!pe&&V!=="ZONES"&&V!=="SKIN"&&V!=="ROOF"&&V!=="OUTER",A.receiveShadow=V!=="ZONES"&&X.material!==m.steel,(v[W]||v.fixed).add(A),ie&&(F[ie]=F[ie]||[]).push(A),S.push(A),C.edges=C.edges||new Tn(C.geometry,28).attributes.position.array;let Q=X.line||m.edge,K=(N.lines[x]||[]).flatMap(ge=>ge.slice(1).flatMap((be,De)=>[...zt(ge[De]).toArray(),...zt(be).toArray()])),ye={node:A,lines:[...X.line&&!te?C.edges:[],...K],line:Q};V==="ZONES"?(A.add(new tn(B(ye.lines),Q)),(w[V]=w[V]||[]).push(A)):(y[[W,V,A.material.uuid,+A.castShadow,+A.receiveShadow]]=y[[W,V,A.material.uuid,+A.castShadow,+A.receiveShadow]]||[]).push(ye)}let B=x=>{let C=new Pt;return C.setAttribute("position",new Tt(x,3)),C};function ae(){let x={};for(let[C,V]of Object.entries(y)){let[W,ie]=C.split(","),fe=V[0].node,te=[],X=[],pe=[],A=0;for(let{node:ge,lines:be,line:De}of V){let Ze=ge.geometry.index?ge.geometry.toNonIndexed():ge.geometry,_e=Ze.attributes.position.count;ge.geometry.computeBoundingBox(),pe.push({start:A,count:_e,box:ge.geometry.boundingBox}),A+=_e,te.push(Ze.attributes.position.array),X.push(Ze.attributes.normal.array),ge.visible=!1,(x[[W,ie,De.uuid]]=x[[W,ie,De.uuid]]||{group:W,layer:ie,line:De,parts:[]}).parts.push(be)}let Q=new Pt;for(let[ge,be]of[["position",te],["normal",X]]){let De=new Float32Array(be.reduce((_e,$e)=>_e+$e.length,0)),Ze=0;for(let _e of be)De.set(_e,Ze),Ze+=_e.length;Q.setAttribute(ge,new Nt(De,3))}let K=[fe.material,fe.material.pierced||fe.material],ye=new Ut(Q,K);Q.addGroup(0,A,0),Object.assign(ye.userData,{ranges:pe,full:K,quick:K.map(ge=>ge.quick||ge)}),T.push(ye),ye.castShadow=fe.castShadow,ye.receiveShadow=fe.receiveShadow,v[W].add(ye),(w[ie]=w[ie]||[]).push(ye)}for(let{group:C,layer:V,line:W,parts:ie}of Object.values(x)){let fe=new tn(B(ie.flat()),W);v[C].add(fe),w[V].push(fe)}}function G(x,C,V){if(!x){V();return}new Dc().parse(x,"",W=>{W.scene.traverse(ie=>{if(!ie.isMesh)return;let fe=[ie.userData.name,ie.name,ie.parent&&ie.parent.name].find(te=>C[te]);fe&&(ie.geometry.scale(Od,Od,Od),M.set(fe,{geometry:ie.geometry,material:ie.material.name}))}),V()},W=>t.failed(W))}function j(){Ce();for(let x of["fixed","hood","cover","cook"])ve(v[x]);y={},w={},F={},S.length=T.length=0,se=null,me=!0;for(let x of[...M.keys()])N.pieces[x]||M.delete(x);for(let x of Object.keys(N.pieces))M.has(x)&&Xe(x,M.get(x));_(),ae()}function he(x){let C=(x||[]).filter(V=>V.k==="straight").map(V=>new Qt().setFromPoints([zt(V.a),zt(V.b)]).expandByScalar(Math.max(V.s[1],V.s[2])/2+.5));for(let{geometry:V,userData:{ranges:W,full:[ie,fe]}}of T){if(V.clearGroups(),ie===fe){let X=W[W.length-1];V.addGroup(0,X.start+X.count,0);continue}let te=null;for(let{start:X,count:pe,box:A}of W){let Q=+C.some(K=>K.intersectsBox(A));te&&te.materialIndex===Q?te.count+=pe:(V.addGroup(X,pe,Q),te=V.groups[V.groups.length-1])}}}let ve=x=>{for(let C of[...x.children])C.traverse(V=>V.geometry&&V.geometry.dispose()),x.remove(C)};function de({x,h:C,cook:V}){let W={x:N.scene.hood.x,z:N.scene.hood.bottom},ie=N.scene.cook.height+C,fe=x-W.x,te=ie-W.z,X=N.scene.hood.coverTop,pe=W.z+N.scene.hood.body;if(v.hood.position.copy(Ht(fe,0,te)),v.cook.position.copy(Ht(V-N.scene.cook.x,0,0)),X&&X>pe){let A=Math.max(.02,(X-pe-te)/(X-pe));v.cover.scale.set(1,A,1),v.cover.position.set(fe,X-X*A,0)}for(let A of w.ZONES||[])if(N.pieces[A.name]&&N.pieces[A.name][1]==="cook"){let Q=N.scene.cook.height+.6,K=Math.max(.02,(ie-Q)/(W.z-Q));A.scale.y=K,A.position.y=Q-Q*K}}function Fe(x){for(let C of F[x]||[])C.children.length||C.add(new tn(new Tn(C.geometry,28),m.barLine)),C.material=m.bars,C.visible=b[C.userData.layer]!==!1,I.push(C)}function Ce(){for(let x of I.splice(0))x.material=x.userData.paint,x.visible=!1}let Me=new Lr;function qe(x,C,V,W){let ie=V.clone().sub(C),fe=ie.length(),te=N.scene.hood.outlet==="rear"?"z":"y";ie.normalize();let X=new L(1,0,0),pe=ie.clone().cross(X),A=[];v.fixed.updateMatrixWorld(!0);for(let Q=-4;Q<=4;Q++)for(let K=-4;K<=4;K++){if(Q*Q+K*K>16)continue;let ye=C.clone().addScaledVector(X,Q/4*W).addScaledVector(pe,K/4*W);Me.set(ye,ie),Me.far=fe;for(let ge of Me.intersectObjects(x,!1))A.push(ge.point[te])}return A.length>1?[Math.min(...A),Math.max(...A)]:null}function at(x){let[C,V]=x.wanted.map(zt),W=N.scene.duct.section,ie=N.scene.hood.outlet==="rear"?"z":"y";v.run.add(Bc(C,V,W,0,m.duct));for(let[X]of x.why?x.why.blockers:[]){let pe=qe(F[X]||[],C,V,W[1]/2);if(!pe)continue;let A=C.clone(),Q=V.clone(),K=[Math.min(C[ie],V[ie]),Math.max(C[ie],V[ie])];if(A[ie]=Math.max(pe[0],K[0]),Q[ie]=Math.min(pe[1],K[1]),Q[ie]-A[ie]>.3&&Q[ie]-A[ie]<40){let ye=Bc(A,Q,W,.16,m.bars);ye.add(new tn(new Tn(ye.geometry,40),m.barLine)),v.clash.add(ye)}}let fe=x.fixes&&x.fixes[0],te=fe?fe.elbows===0:!x.why||x.why.goes===x.why.wanted;if(x.ghost!==null&&te){let X=Ht(x.ghost,0,0),pe=Bc(C.clone().add(X),V.clone().add(X),W,0,m.ghost);pe.castShadow=!1,v.clash.add(pe)}}function U(x){let C=x.end&&N.faces[x.end.face];if(!(!C||C.kind==="roof"))for(let[V,,W,ie,fe,te]of C.keep){let X=x.findings.find(_e=>_e.where.includes(V)&&_e.unit==="in"&&_e.limit!==null&&_e.limit<130);if(!X)continue;let pe=X.limit,[A,Q,K,ye]=[W,ie,fe,te],ge=[];for(let[_e,$e,st]of[[K,ye,0],[A,ye,1],[A,Q,2],[K,Q,3]])for(let Ie=0;Ie<=10;Ie++){let gt=(st+Ie/10)*Math.PI/2;ge.push(new xe(Math.min(C.hi[0],Math.max(C.lo[0],_e+pe*Math.cos(gt))),Math.min(C.hi[1],Math.max(0,$e+pe*Math.sin(gt)))))}let be=new Ps(new Li(ge),{depth:6,bevelEnabled:!1}),De=C.at+C.sign*(C.sign>0?.5:6.5);be.applyMatrix4(C.axis===1?new je().set(1,0,0,0,0,1,0,0,0,0,-1,-De,0,0,0,1):new je().set(0,0,1,De,0,1,0,0,-1,0,0,0,0,0,0,1));let Ze=new Ut(be,m.zone);Ze.add(new tn(new Tn(be,20),m.zoneLine)),v.keep.add(Ze)}}function _t(x){if($=x,!!J){if(de(x),ve(v.run),ve(v.clash),ve(v.keep),Ce(),bg(x.parts,zt),he(x.parts),x.parts){v.run.add(_g(x.parts,m,new Set(x.findings.filter(V=>V.state==="broken"&&!V.waived).flatMap(V=>V.where))));let C=x.parts[x.parts.length-1];v.run.add(xg({...x.end,wide:C.w},C.o||C.s,m))}else x.wanted&&at(x);U(x);for(let C of x.barred)Fe(C);pt(),ct(),Se()}}function Qe(x){x&&Object.assign(b,x),pt(),x&&ct(),Oe()}function pt(){for(let[x,C]of Object.entries(w))for(let V of C)V.visible=x==="OUTER"?b.ROOF&&P==="outside":b[x]!==!1;for(let x of I)x.visible=b[x.userData.layer]!==!1;v.run.visible=v.clash.visible=b.DUCT,v.cover.visible=b.COVER&&P!=="along",v.keep.visible=b.ZONES&&P==="outside"}function Ee(){let x=ue=Sg(m,Jr());o.background=n?null:vg(x),d.intensity=x.sky,u.intensity=x.sun,f.intensity=x.fill,Oe()}function Et(x,C){if(P=x,!$)return;let V=typeof x=="string"?Tg(x,$,k):x,W={p:a.position.clone(),t:h.target.clone(),f:a.fov,s:[...c]},ie=performance.now(),fe=C==="now"||wa()?0:700;cancelAnimationFrame(re);let te=()=>{let X=fe?Math.min(1,(performance.now()-ie)/fe):1,pe=X*X*(3-2*X);a.position.lerpVectors(W.p,V.p,pe),h.target.lerpVectors(W.t,V.t,pe),a.fov=W.f+(V.f-W.f)*pe,c=[0,1].map(A=>W.s[A]+(V.s[A]-W.s[A])*pe),a.lookAt(h.target),a.updateProjectionMatrix(),me=!0,X<1?(re=requestAnimationFrame(te),we()):(h.update(),C!=="now"?we():Oe())};te(),Qe(),t.stood(P)}h.addEventListener("start",()=>{P&&(P=null,t.stood(null),Qe())}),h.addEventListener("change",Oe);let Ye=(x,C,V)=>{let W=Ht(x,C,V).project(a);return[(W.x+1)/2*k.width,(1-W.y)/2*k.height,W.z]},Ke=new Lr;function R(x,C){Ke.setFromCamera(new xe(x/k.width*2-1,1-C/k.height*2),a);let V=A=>A==="OUTER"?b.ROOF&&P==="outside":A!=="ZONES"&&b[A]!==!1&&!(A==="COVER"&&P==="along"),W=[...S.filter(A=>V(A.userData.layer)),...v.run.children],ie=Ke.intersectObjects(W,!0).find(A=>A.object.isMesh&&g.distanceToPoint(A.point)>-1e-6);if(!ie)return null;let fe=ie.point.clone(),te=11,X=!1,pe=ie.object.geometry.attributes.position;for(let A=0;A<pe.count&&pe.count<2e4;A++){let Q=new L().fromBufferAttribute(pe,A).applyMatrix4(ie.object.matrixWorld),K=Q.clone().project(a),ye=Math.hypot((K.x+1)/2*k.width-x,(1-K.y)/2*k.height-C);ye<te&&Q.distanceTo(ie.point)<30&&(te=ye,fe=Q,X=!0)}return{at:[fe.x,-fe.z,fe.y],corner:X,label:ie.object.userData.label||ie.object.parent&&ie.object.parent.userData.label||"duct"}}return G(e,N.pieces,()=>{j(),J=!0,Ee(),u.castShadow=!1,$&&_t($),ct(),t.ready(),n||setTimeout(()=>{Ue(),ct(),Oe()},60)}),{boxOf(x){let C=M.get(x);if(!C)return null;C.geometry.computeBoundingBox();let{min:V,max:W}=C.geometry.boundingBox;return[V.x,W.x,-W.z,-V.z,V.y,W.y]},set:_t,read:G,furnish:j,layer:Qe,theme:Ee,go:Et,project:Ye,pick:R,ask:Oe,full:le,shown:b,draw(){me=!0,we()},info:()=>({slow:n,...r.info.render}),size(x){k=x,r.setPixelRatio(Math.min(devicePixelRatio,2)),r.setSize(x.width,x.height),a.aspect=x.width/x.height,P?Et(P,"now"):(a.updateProjectionMatrix(),Oe())},cut(x,C){let V={y:[0,0,-1],x:[1,0,0],z:[0,-1,0]}[x];g.normal.set(...V),r.localClippingEnabled=C!==null;for(let W of m.solid){let ie=C===null?An:nn;W.side!==ie&&(W.side=ie,W.needsUpdate=!0)}g.constant=C===null?1e4:x==="y"||x==="x"?-C:C,ct(),Oe()},gone(x,C){if(r.localClippingEnabled&&g.distanceToPoint(zt(x))<-.01)return!0;let V=$&&$.parts?$.parts.map(ie=>ie.id):[],W=C.flatMap(ie=>V.includes(ie)||ie==="cap"?["DUCT"]:(F[ie]||[]).map(fe=>fe.userData.layer));return W.length>0&&W.every(ie=>b[ie]===!1)},view:()=>P,behind:()=>a.position.z<-N.scene.wall,canvas:r.domElement,camera:a,turn(x,C){P&&(P=null,t.stood(null),Qe());let V=new ss().setFromVector3(a.position.clone().sub(h.target));V.theta+=x,V.phi=Math.min(2.6,Math.max(.2,V.phi+C)),a.position.copy(h.target).add(new L().setFromSpherical(V)),h.update(),Oe()}}}var pa=(i,e,t=26)=>i==="broken"?`<svg class="fl" width="${t*1.25}" height="${t}" viewBox="0 0 35 28" aria-hidden="true"><path d="M2 1V27" class="pole"/><path d="M2 2H34L28 11.5L34 21H2Z" fill="url(#p-bad)" class="pen"/><circle cx="14" cy="11.5" r="8.2" class="disc"/><text x="14" y="15.6" text-anchor="middle">${e}</text></svg>`:i==="close"?`<svg class="fl close" width="${t*1.25}" height="${t}" viewBox="0 0 35 28" aria-hidden="true"><path d="M2 1V27" class="pole"/><path d="M2 3H26V20H2Z" class="pen"/><text x="14" y="16" text-anchor="middle">${e}</text></svg>`:i==="fine"?`<svg class="fl ok" width="${t*1.25}" height="${t}" viewBox="0 0 35 28" aria-hidden="true"><path d="M7 14L12 19L22 8"/></svg>`:`<svg class="fl open" width="${t*1.25}" height="${t}" viewBox="0 0 35 28" aria-hidden="true"><circle cx="14" cy="14" r="7"/></svg>`,Ng=i=>i.startsWith("Works")?'<svg viewBox="0 0 64 64" aria-hidden="true" class="ok"><circle cx="32" cy="32" r="27"/><path d="M19 33L28 42L45 23"/></svg>':'<svg viewBox="0 0 64 64" aria-hidden="true"><path d="M7 4V60" class="pole"/><path d="M7 6H60L50 23L60 40H7Z" fill="url(#p-bad)" class="pen"/></svg>',Dg='<svg viewBox="0 0 64 64" aria-hidden="true" class="old"><circle cx="32" cy="32" r="26"/><path d="M20 32H44"/></svg>';function Ug(i){if(i.measured===null||i.limit===null||!["at least","at most"].includes(i.relation))return"";let e=i.relation==="at most",t=Math.max(Math.abs(i.measured-i.limit)*1.7,Math.abs(i.limit)*.25,1e-6),n=i.limit-t,s=i.limit+t,r=118,o=d=>4+(Math.min(Math.max(d,n),s)-n)/(s-n)*(r-8),a=i.state==="broken",c=e?o(i.limit):4,l=e?r-4:o(i.limit),h="";for(let d=0;d<=8;d++)h+=`M${4+d*(r-8)/8} 14v${d%4?-3:-5}`;return`<svg class="gauge" width="${r}" height="22" viewBox="0 0 ${r} 22" preserveAspectRatio="xMinYMid" aria-hidden="true"><rect x="${c}" y="6" width="${Math.max(0,l-c)}" height="8" fill="url(#p-dim)"/><path class="gb" d="M4 14H${r-4}${h}"/><path class="gl" d="M${o(i.limit)} 3V18"/><path class="gm${a?" bad":""}" d="M${o(i.measured)} 13l-4 7h8z"/></svg>`}function Og(i){let{scene:e,tape:t}=N,n=[];for(let T of i.parts)if(!(T.l<1e-6)){if(n.push(T.a),T.k==="elbow"){let y=T.a.map((w,F)=>w+T.d[F]*T.r*Math.tan(T.g*Math.PI/360));for(let w of[.25,.5,.75])n.push(T.a.map((F,I)=>(1-w)*(1-w)*F+2*w*(1-w)*y[I]+w*w*T.b[I]))}n.push(T.b)}let s=T=>Math.max(...n.map(y=>y[T]))-Math.min(...n.map(y=>y[T])),r=s(0)>=s(1)-.5||s(1)<2?0:1,o=e.hood,a=n[0][2]-o.body,c=n.map(T=>T[r]),l=(r?o.depth:o.width)/2,h=r?-o.depth/2:n[0][0],d=Math.min(...c,h-l)-8,u=Math.max(...c,h+l)+(r?14:8),f=a-4,p=Math.max(n[n.length-1][2]+9,e.ceiling+14),_=Math.min(116/(u-d),100/(p-f)),g=60-_*(d+u)/2,m=T=>(g+_*T).toFixed(1),v=T=>(104-_*(T-f)).toFixed(1),M=(r&&i.section[0]!=="round"?i.section[2]:i.section[1])*_,b=`<path class="sc" d="M${m(Math.max(d,r?-e.depth:0))} ${v(e.ceiling)}H${m(Math.min(u,r?0:e.width))}"/>`;if(r)b+=`<path class="sw" d="M${m(0)} ${v(f)}V${v(e.ceiling+10)}M${m(e.wall)} ${v(f)}V${v(e.ceiling+10)}"/>`;else for(let T of t.joists)T.a>d&&T.b<u&&(b+=`<path class="sj" d="M${m(T.a)} ${v(e.ceiling+.6)}H${m(T.b)}V${v(e.ceiling+8)}H${m(T.a)}Z"/>`);b+=`<path class="shd" d="M${m(h-l)} ${v(a)}H${m(h+l)}L${m(n[0][r]+7)} ${v(a+o.body)}H${m(n[0][r]-7)}Z"/>`,b+=`<path class="sd2" style="stroke-width:${(M+2).toFixed(1)}" d="M${n.map(T=>`${m(T[r])} ${v(T[2])}`).join("L")}"/><path class="sd1" style="stroke-width:${Math.max(M-2,1).toFixed(1)}" d="M${n.map(T=>`${m(T[r])} ${v(T[2])}`).join("L")}"/>`;for(let T of i.parts)T.k==="flex"&&(b+=`<path class="sfx" style="stroke-width:${(M+1).toFixed(1)}" d="M${m(T.a[r])} ${v(T.a[2])}L${m(T.b[r])} ${v(T.b[2])}"/>`);let S=n[n.length-1];return b+=i.end.kind==="roof"?`<path class="scap" d="M${m(S[r])-M*.8} ${v(S[2]+4)}h${M*1.6}l${-M*.5} -6h${-M*.6}z"/>`:i.end.kind?`<path class="scap" d="M${m(S[r])-2} ${v(S[2])-M*.7}h5v${M*1.4}h-5z"/>`:"",`<svg viewBox="0 0 120 108" aria-hidden="true">${b}</svg>`}var tw=i=>Ft(i);function nw(i,e){if(i.grid.phone)return"";let t="",n=-1e9;for(let[s,r,o]of N.numbers){if(i.gone(r,[o]))continue;let a=i.project(r[0],r[1],r[2]-1.2),c=e.barred.has(o);!i.inside(a)||a[0]-n<16&&!c||(t+=`<text class="jn${c?" hit":""}" x="${a[0]}" y="${a[1]+8}">${on(s)}</text>`,n=a[0])}return t}function iw(i,e){if(i.grid.phone||!e.parts)return"";let t=(N.numbers[0]?N.numbers[0][1][2]:N.scene.ceiling)+4,n=e.parts.find(h=>h.k==="straight"&&Math.abs(h.d[2])>.99&&Math.min(h.a[2],h.b[2])<t&&Math.max(h.a[2],h.b[2])>t);if(!n||i.gone([...n.a.slice(0,2),t],[n.id]))return"";let[s,r]=n.a,o=(n.w&&Math.abs(n.w[1])>.5?n.s[2]:n.s[1])/2,a=N.tape.joists.filter(h=>h.b<=s-o+1e-6).pop(),c=N.tape.joists.find(h=>h.a>=s+o-1e-6),l="";for(let[h,d]of[a&&[a.b,s-o],c&&[s+o,c.a]].filter(Boolean)){if(i.gone([(h+d)/2,r,t],[(h===a?.b?a:c).id]))continue;let u=i.project(h,r,t),f=i.project(d,r,t);d-h<.3||f[0]-u[0]<12||(l+=`<g class="slack"><path d="M${u[0]} ${u[1]-5}v10M${f[0]} ${f[1]-5}v10M${u[0]} ${u[1]}H${f[0]}"/><text x="${(u[0]+f[0])/2}" y="${u[1]-7}">${Ta(d-h)}</text></g>`)}return l}function sw(i,e){let t=e.ghost;if(e.verdict.startsWith("Works")||t===null||!i.shown.DUCT)return"";let n=N.scene.cook.height+e.h,s=-N.scene.hood.depth,r=i.project(e.x,s,n-3.6),o=i.project(e.x+t,s,n-3.6),a=i.project(e.x,s,n),c=Math.sign(o[0]-r[0])||1;return`<g class="ghost"><path class="ga" d="M${r[0]} ${a[1]+4}V${r[1]+8}M${r[0]} ${r[1]}H${o[0]}M${o[0]-c*6} ${r[1]-5}L${o[0]} ${r[1]}L${o[0]-c*6} ${r[1]+5}M${o[0]} ${r[1]-8}V${r[1]+8}"/>${i.grid.phone?"":`<text x="${c>0?r[0]-8:r[0]+8}" y="${r[1]+5}" text-anchor="${c>0?"end":"start"}">${He(Math.abs(t))} ${Wi(t)}</text>`}</g>`}var Bd=[];function rw(i,e){Bd=[];let t=ee("#ht"),{band:n,scene:s,map:r}=N;if(!["square","near","room"].includes(i.view))return t.hidden=!0,"";let a=i.grid.phone,c=s.hood.width/2+(a?5:6.5),l=e.x+c+12<s.width,h=l?1:-1,d=e.x+h*c,u=s.cook.height,f=Math.ceil(Math.max(38,n.hi+5,e.h+5)),p=F=>i.project(d,0,u+F),_=p(0),g=p(f),m=p(n.lo),v=p(n.hi),M=p(e.h),b=a?11:15,S="";for(let F=0;F<=f;F++){if(a&&F%2)continue;let I=p(F);S+=`M${I[0]-b/2} ${I[1]}h${F%12===0?b:F%6===0?b*.6:b*.33}`}let T=(F,I,D)=>{if(!I&&!r)return"";let $=p(F),J=Math.abs($[1]-M[1])<21,P=$[0]+h*(b/2+5),k=l?"start":"end",re=Math.floor(((l?i.width-P:P)-12-He(F).length*6.8)/6.6),Y=I.length>re?re<8?"":I.slice(0,re-1)+"…":I,me=He(F).length*6.8+(I&&!a?5+Y.length*6.6:0),se=$[1]+(D?-4:13);return J||Bd.push([l?P-2:P-me-2,se-13,l?P+me+2:P+2,se+4]),`<g class="lim"><path d="M${$[0]-b/2-3} ${$[1]}h${b+6}"/>${J?"":`<text x="${P}" y="${se}" text-anchor="${k}"><tspan class="hv">${He(F)}</tspan>${I&&!a?`<tspan class="hs" dx="5">${on(Y)}</tspan>`:""}</text>`}</g>`};t.hidden=!1,t.style.left=`${M[0]}px`,t.style.top=`${M[1]}px`,t.dataset.side=h,t.band=[m[1],v[1]],ee("#httxt").textContent=He(e.h);let y=ai(),w=`${He(e.h)} above the cooktop. Between ${He(n.lo)}${n.loWhy?`, ${n.loWhy}`:""}, and ${He(n.hi)}${n.hiWhy?`, ${n.hiWhy}`:""}`;for(let[F,I]of[["aria-valuemin",y[0]],["aria-valuemax",y[y.length-1]],["aria-valuenow",e.h],["aria-valuetext",w]])t.setAttribute(F,I);return`<g class="vt"><path class="vb" d="M${_[0]-b/2} ${_[1]}L${g[0]-b/2} ${g[1]}h${b}L${_[0]+b/2} ${_[1]}z"/>${n.hi>n.lo?`<path class="vz" d="M${v[0]-b/2} ${v[1]}h${b}L${m[0]+b/2} ${m[1]}h${-b}z"/>`:""}<path class="tk" d="${S}"/>${n.hi>n.lo?T(n.lo,n.loWhy,!1)+T(n.hi,n.hiWhy,!0):""}</g>`}function ow(i,e){if(!e.length)return"";let t=e.map(s=>i.project(...s.at)),n=t.map(s=>`<circle cx="${s[0]}" cy="${s[1]}" r="4.5"/>`).join("");if(e.length===2){let[s,r]=e.map(c=>c.at),o=r.map((c,l)=>c-s[l]),a=[(t[0][0]+t[1][0])/2,(t[0][1]+t[1][1])/2];n=`<path d="M${t[0][0]} ${t[0][1]}L${t[1][0]} ${t[1][1]}"/>${n}<text x="${a[0]}" y="${a[1]-10}" text-anchor="middle">${He(Math.hypot(...o))}</text>`}return`<g class="ms">${n}</g>`}var kd=i=>{if(i.length<2)return i.length?`From ${i[0].label}. Now the second point.`:"Touch two points of the picture; corners attract.";let[e,t]=i.map(r=>r.at),n=t.map((r,o)=>Math.abs(r-e[o])),s=[["across",n[0]],["in depth",n[1]],["up",n[2]]].filter(([,r])=>r>.03).map(([r,o])=>`${He(o)} ${r}`);return`${He(Math.hypot(...n))} from ${i[0].label} to ${i[1].label}${s.length>1?`: ${s.join(", ")}`:""}.`};function aw(i,e,t){let n=ee("#flags");n.replaceChildren();let s="",r=[],o=ee("#ht");if(!o.hidden){let h=parseFloat(o.style.left),d=parseFloat(o.style.top);r.push(o.dataset.side==="-1"?[h-84,d-16,h+12,d+16]:[h-12,d-16,h+84,d+16])}r.push(...Bd);let a=ee("#pic").getBoundingClientRect();for(let h of[".step","#key","#rulertxt","#trying"]){let d=ee(h).getBoundingClientRect();d.width&&r.push([d.left-a.left-4,d.top-a.top-4,d.right-a.left+4,d.bottom-a.top+4])}let c=(h,d,u,f)=>!r.some(p=>h<p[2]&&p[0]<h+u&&d-f<p[3]&&p[1]<d),l=3;for(let h of e.findings){let d=Te.picked===h.code+h.n;if(!h.place||h.state==="open"||h.state==="fine"&&!d||i.behind&&h.place[1]<N.scene.wall-1&&h.place[2]<N.scene.ceiling+6||i.gone(h.place,h.where))continue;let u=i.project(...h.place);if(!i.inside(u))continue;let f=h.state==="broken",p=f?26:0,_=f?32:22,g=f||d?to(h)||h.title:"",m=(f?40:28)+(g?g.length*7+12:0),v=Math.max(u[1]-p,_+4),M=Array.from({length:24},(k,re)=>v-8*re).filter(k=>k>=_+4),b=Array.from({length:24},(k,re)=>Math.max(v,u[1]+_+2)+8*re).filter(k=>k<=i.height-4),S=Math.max(4,Math.min(u[0],i.width-m-4)),T=Math.max(4,Math.min(u[0]-m+4,i.width-m-4)),w=[[S,M.slice(0,12)],[T,M.slice(0,12)],[S,b.slice(0,12)],[T,b.slice(0,12)],[S,M.slice(12)],[S,b.slice(12)]].flatMap(([k,re])=>re.map(Y=>[k,Y])).filter(([k,re])=>c(k,re,m,_)),F=([,k])=>k-_>u[1]-1?c(u[0]-1,k-_,l,k-_-u[1]):c(u[0]-1,u[1],l,u[1]-k),[I,D]=w.find(F)??w[0]??[S,v],$=D-_>u[1]-1;r.push([I,D-_,I+m,D],$?[u[0]-1,u[1],u[0]+2,D-_]:[u[0]-1,D,u[0]+2,u[1]]);let J=z("button",{class:`pin ${h.state}${d?" sel":""}`,"aria-label":`Flag ${h.n}: ${h.title}`,on:{click:()=>t(h)}},tw(pa(h.state==="fine"?"close":h.state,h.n,h.state==="broken"?32:22)),z("span",{},to(h)||h.title));J.style.left=`${I/i.width*100}%`,J.style.top=`${D/i.height*100}%`,Math.abs(u[0]-I)>2&&J.classList.add("aside"),s+=`<path d="M${u[0]} ${u[1]}V${$?D-_:D}"/>`,J.style.setProperty("--at",`${u[0]-I}px`),n.append(J);let P=J.offsetWidth;I<u[0]-8&&I+P<u[0]&&(J.style.left=`${(u[0]-P+4)/i.width*100}%`)}n.prepend(Ft(`<svg class="poles" viewBox="0 0 ${i.width} ${i.height}" aria-hidden="true">${s}</svg>`))}function Fg(i,e,t,n){let s=ee("#over");s.setAttribute("viewBox",`0 0 ${i.width} ${i.height}`);let r="";if(i.view==="square"){let o=i.project(e.x,e.end?e.end.at[1]:-9,kc(e.end)||N.scene.cook.height+e.h+N.scene.hood.body),a=e.end&&e.end.kind==="roof"&&Math.abs(e.end.at[0]-e.x)<.2;r+=`<path class="plumb" d="M${i.tapeAt} 0V${Math.max(0,a||!e.end?o[1]:i.project(e.x,-9,N.scene.ceiling+8)[1])}"/>${nw(i,e)}${iw(i,e)}${sw(i,e)}`}r+=rw(i,e)+ow(i,t),s.innerHTML=r,aw(i,e,n)}var lw={"proven best":"best, proven","best found":"best found"},cw={broken:"Broken",close:"Close",fine:"Fine",open:"Not checked"};function ma(i,e){let{verdict:t,text:n,second:s}=rt.old?{verdict:rt.old.word,text:rt.old.text,second:"What stands below, greyed, is the plan of the scene before this."}:i;document.body.dataset.verdict=rt.old?"old":t.startsWith("Works")?"ok":"bad",ee("#mark").replaceChildren(Ft(rt.old?Dg:Ng(t))),ee("#word").textContent=t,ee("#sentence").textContent=n,ee("#sentence").className=n.length>95?"long":"",ee("#why").textContent=s;let r=rt.apply||N.live?N.plan.assumptions.length:0;ee("#guessed").textContent=r&&!rt.old?`${r} of its numbers ${r===1?"is":"are"} guessed, not measured.`:"";let o=Math.abs(i.x-N.scene.hood.x)>.02,a=Math.abs(i.cook-N.scene.cook.x)>.02;ee("#goes").replaceChildren(...i.from?[z("b",{},i.from),", as planned again. "]:[],o?a?"The cooktop goes with the hood. ":"The cooktop stays where it is. ":"",i.from?z("button",{type:"button",class:"quiet",on:{click:()=>e(N.scene.hood.x,N.scene.hood.bottom-N.scene.cook.height)}},"Back"):""),ee("#where").replaceChildren("Hood centre ",z("b",{},He(i.x))," from the left wall, ",z("b",{},He(i.h))," above the cooktop.");let c=ee("#act"),l=rt.old||i.verdict.startsWith("Works")?null:i.fixes[0];if(c.hidden=!l,l){c.replaceChildren(z("b",{},l.title),z("span",{},l.note));let h=rt.apply&&l.fix&&l.fix.set;c.classList.toggle("plain",!!l.still&&!h),c.onclick=()=>h?rt.apply(l.fix.set):l.still?document.querySelector("#finds").scrollIntoView({block:"nearest"}):e(l.x,l.h,l.plan)}clearTimeout(ma.later),ma.later=setTimeout(()=>{ee("#live").textContent=`${t}. ${n}`},500)}function Bg(i,e){return i.fixes.length?z("div",{class:"fixes"},i.fixes.slice(0,6).map((t,n)=>rt.apply&&t.fix&&t.fix.set?z("button",{class:`fix${n?"":" first"}`,on:{click:()=>rt.apply(t.fix.set)}},z("b",{},t.title),z("span",{},t.note)):t.still?z("div",{class:"fix plain"},z("b",{},t.title),z("span",{},t.note),t.more?z("span",{},t.more):null):z("button",{class:`fix${n?"":" first"}`,on:{click:()=>e(t.x,t.h,t.plan)}},z("b",{},t.title),z("span",{},t.note)))):null}function hw(i,e,t,n,s){let r=[["measured",i.measured===null?"":fn(i.measured,i.unit)],["limit",no(i)],["spare",i.margin===null?"":fn(i.margin,i.unit).replace(/ of .*/,"")]].filter(([,l])=>l),o=Ug(i),a=z("button",{class:"go","aria-label":`${cw[i.state]} ${i.n}: ${i.title}. ${r.map(([l,h])=>`${l} ${h}`).join(", ")}.${i.place?" Show the place":""}`,on:{click:()=>t(i)}},z("span",{class:"fw"},Ft(pa(i.state,i.n))),z("span",{class:"ft"},z("b",{},i.title),r.length?z("span",{class:"nums"},r.map(([l,h])=>z("span",{},z("i",{},l),l==="spare"?z("strong",{},h):h))):null),o?Ft(o):null),c=[i.detail,i.remedy,i.waived?`Waived: ${i.waived}`:""].filter(Boolean);return z("li",{class:`find ${i.state}${Te.picked===i.code+i.n?" sel":""}`},a,c.map(l=>z("div",{class:"det"},l)),z("div",{class:"src"},i.source),s?Bg(e,n):null)}function uw(i,e){let t=!no(i)&&!i.relation,n=i.measured===null?i.detail:`${t?Qr(()=>fn(i.measured,i.unit)):fn(i.measured,i.unit)}${no(i)?`, needs ${no(i)}`:i.relation?"":`, ${i.detail}`}.`;return z("li",{class:`brief${Te.picked===i.code+i.n?" sel":""}`},z("button",{class:"bgo",on:{click:()=>e(i)}},Ft(pa(i.state,i.n,22)),z("span",{},z("b",{},i.title),z("i",{},[n,i.source].filter(Boolean).map(s=>s.replace(/[.\s]+$/,"")).join(". "))),i.state==="fine"?z("strong",{},to(i)):null))}function Gd(i,e,t){let n=h=>i.findings.filter(d=>d.state===h),s=n("broken"),r=n("close"),o=n("fine"),a=n("open"),c=i.verdict.startsWith("Works"),l=s.some(h=>h.must&&!h.waived);!c&&!i.parts&&!s.length?ee("#count").replaceChildren("no duct to check"):ee("#count").replaceChildren(z("b",{},String(s.length)),s.length&&c&&!l?" broken, none a must ":" broken ",z("i",{},"·")," ",z("b",{},String(r.length))," close ",z("i",{},"·")," ",z("b",{},String(o.length))," fine"),ee("#finds").replaceChildren(...[...s,...r].map((h,d)=>hw(h,i,e,t,d===0&&h.state==="broken"))),!s.length&&!r.length&&ee("#finds").append(z("li",{class:"none"},i.verdict.startsWith("Works")?i.findings.length?"Nothing is broken and nothing is close.":"Nothing has been checked here.":"No duct could be laid, so its own checks were not made.")),!s.length&&i.fixes.length&&!i.verdict.startsWith("Works")&&ee("#finds").prepend(z("li",{class:"find broken"},Bg(i,t)));for(let[h,d,u,f]of[["#fine",o,"check is fine","checks are fine"],["#open",a,"check was not made","checks were not made"]]){let p=ee(h);p.hidden=!d.length,h==="#fine"&&!p.dataset.set&&(p.open=d.length<=7,p.dataset.set="1"),p.querySelector("summary").textContent=`${d.length} ${d.length===1?u:f}`,p.querySelector("ul").replaceChildren(...d.map(_=>uw(_,e)))}}function Hc(i){let{options:e}=N.plan;ee("#ways").hidden=!e.length,ee("#alts").replaceChildren(...e.slice(0,6).map((t,n)=>{let{route:s}=t,r=t.air===null?"flow unknown":`${Bt(t.air)} ${Pn()}`,o=[s.turns,xs(s.length),r],a=t.broken?`${t.broken} broken`:n===0?lw[N.plan.outcome]||"":s.boxed>0?`${xs(s.boxed)} boxed in`:"",c=z("button",{class:`alt${t.broken?" bad":""}`,"aria-label":`Way ${s.id}: ${s.words}, ${o.join(", ")}. ${a}`,on:{click:()=>i(n)}},z("span",{class:"al"},s.id),Ft(Og(s)),z("b",{},s.end.kind==="roof"?"Through the roof":s.end.kind?`Through ${s.end.label}`:"Ends indoors"),z("span",{class:"af"},o.map((l,h)=>[h?z("br"):null,l])),z("span",{class:"an"},a));return c.dataset.way=n,c}))}var kg=i=>{let{options:e}=N.plan,t=["No way","One way","Two ways","Three ways","Four ways","Five ways"][e.length]||`${e.length} ways`;ee("#waysname").textContent=`${t} out${i.planned?"":` at ${He(N.scene.hood.x)}, as planned`}`;for(let n of ee("#alts").children)n.setAttribute("aria-pressed",String(i.planned&&+n.dataset.way===Te.option))},dw={allowed:"May be cut","allowed within these numbers":"May be cut within this","not allowed":"May not be cut","engineer or maker decides":"Engineer or maker decides"},fw=i=>z("li",{},z("b",{},i.label),z("strong",{class:i.verdict==="not allowed"?"no":""},dw[i.verdict]||i.verdict),i.allowed!==null&&i.ours!==null?z("span",{class:"num"},`${i.measure}: ours ${He(i.ours)}, at most ${He(i.allowed)}`):null,z("span",{},i.rule),i.detail&&i.detail!==i.rule?z("span",{},i.detail):null,i.remedy?z("span",{},i.remedy):null,i.framing.length?z("span",{},`An opening would need: ${i.framing.map(([e,t,n,s])=>`${s>1?`${s} × `:""}${e}${t?` ${t}`:""}${n===null?"":`, ${He(n)}`}`).join("; ")}.`):null,z("em",{},i.source)),pw=i=>i[0].toUpperCase()+i.slice(1),mw=i=>i[0].toLowerCase()+i.slice(1),zd=new Set;function zg(i){let e=z("input",{type:"checkbox",checked:zd.has(i),on:{change:()=>{e.checked?zd.add(i):zd.delete(i)}}});return e}var gw=i=>([e,t,n,s])=>z("li",{},z("label",{},zg(`${i} ${e}`),z("span",{},z("b",{},pw(e)),z("span",{},t),z("em",{},`${He(n)} to spare; the plan changes at ${s}`)))),_w=i=>([e,t,n])=>z("li",{},z("label",{},zg(`${i} ${e}`),z("span",{},e,t?z("em",{},` Go on only when: ${mw(t)}`):null,n?z("em",{class:"mind"},` ${n}`):null))),Hd=[];function Hg(i){let e=N.plan.options[0],{work:t}=i,n=e?{...e.work,members:e.members}:{measure:[],steps:[],members:N.members},s=e?`Worked out for way ${e.route.id} with the hood at ${He(N.scene.hood.x)}, ${He(N.scene.hood.bottom-N.scene.cook.height)} above the cooktop; plan again for this place.`:"Plan again for this place.",r=t&&t.steps.length&&!i.verdict.startsWith("Works")?"Nothing to cut yet: clear what is broken first.":"",o=[i.work,i.members,i.planned&&Te.option,dn(),s,r];if(o.every((c,l)=>c===Hd[l])&&o.length===Hd.length)return;Hd=o;let a=i.option?i.option.route.id:"";for(let[c,l,h,d,u]of[["#members",i.members,n.members,fw,""],["#measures",t&&t.measure,n.measure,gw(a),""],["#work",t&&t.steps,n.steps,_w(a),r]]){let f=ee(c),p=f.querySelector(".away");f.hidden=!(l||h).length,p.hidden=!!l&&!u,p.textContent=l?u:s,f.querySelector("ul,ol").replaceChildren(...Qr(()=>(l||[]).map(d))),f.querySelector(".asis").hidden=Zn()||!(l&&l.length);let _=f.querySelector(".lead:not(.away,.asis)");_&&(_.hidden=!l)}}function Gg(){for(let i of document.querySelectorAll(".asis"))i.hidden=Zn(),i.textContent=`${i.dataset.what} ${i.dataset.air?Ea().replace(",",N.scene.metric?" and l/s,":" and cfm,"):Ea()}.`.trim().replace(/^i/,"I")}function Vd(){ee("#taken").hidden=!N.plan.assumptions.length,ee("#assumed").replaceChildren(...N.plan.assumptions.map(([i,e,t])=>z("li",{},z("b",{},i),` ${e}. `,z("em",{},t)))),ee("#taken summary").textContent=`${N.plan.assumptions.length} ${N.plan.assumptions.length===1?"number was":"numbers were"} not measured`}var Xr=460,Xs=250,ga=46,_a=34,Gc=14,Wd=12,Vg=(i,e)=>{let t=10**Math.floor(Math.log10(i));return e.map(n=>n*t).find(n=>n>=i)||10*t};function xw(i){let e=Math.max(...i.fan.map(m=>m[0]),i.at[0]*1.1,1),t=Math.max(...i.fan.map(m=>m[1]),i.at[1]*1.2,.05),n=m=>ga+m/e*(Xr-ga-Wd),s=m=>Xs-_a-Math.min(m,t*1.06)/(t*1.06)*(Xs-_a-Gc),r=m=>m.filter(v=>v[1]<=t*1.06&&v[0]<=e),o=m=>r(m).map(([v,M],b)=>`${b?"L":"M"}${n(v).toFixed(1)} ${s(M).toFixed(1)}`).join(""),a=Vg(e/5,[1,2,2.5,5,10]),c=Vg(t/4,[1,2,2.5,5,10]),l="",h="";for(let m=0;m<=e+1e-6;m+=a)l+=`M${n(m)} ${Xs-_a}V${Gc}`,h+=`<text x="${n(m)}" y="${Xs-_a+15}" text-anchor="middle">${Bt(m)}</text>`;for(let m=0;m<=t+1e-9;m+=c)l+=`M${ga} ${s(m)}H${Xr-Wd}`,h+=`<text x="${ga-6}" y="${s(m)+4}" text-anchor="end">${dn()==="mm"?Math.round(m*249.08891):+m.toFixed(3)}</text>`;let d=i.low.length&&i.high.length?`<path class="ab" d="${o(i.low)}${r(i.high).slice().reverse().map(([m,v])=>`L${n(m).toFixed(1)} ${s(v).toFixed(1)}`).join("")}Z"/>`:"",u=r(i.system),f=u[Math.floor(u.length*.45)]||[0,0],[p,_]=i.at,g=s(_)<Gc+34;return`<svg class="airfig" viewBox="0 0 ${Xr} ${Xs}" role="img" aria-label="Fan and duct meet at ${on(Bt(p))} ${Pn()} and ${on(fn(_,"in wg"))}"><path class="ag" d="${l}"/>${d}<path class="as" d="${o(i.system)}"/><path class="af2" d="${o(i.fan)}"/>
<path class="ap" d="M${n(p)} ${Xs-_a}V${s(_)}"/><circle cx="${n(p)}" cy="${s(_)}" r="5"/><text class="al2" x="${n(p)+(n(p)>Xr-150?-9:9)}" y="${s(_)+(g?18:-10)}" text-anchor="${n(p)>Xr-150?"end":"start"}">${Bt(p)} ${Pn()} at ${on(fn(_,"in wg"))}</text>
<text class="an2" x="${n(i.fan[0][0])+6}" y="${s(i.fan[0][1])+16}">fan</text><text class="an2 sys" x="${n(f[0])}" y="${s(f[1])-9}" text-anchor="middle">duct</text>${h}<text x="${Xr-Wd}" y="${Xs-4}" text-anchor="end">flow, ${Pn()}</text><text x="${ga-40}" y="${Gc-3}">${dn()==="mm"?"Pa":"in wg"}</text></svg>`}function Wg(i){let e=i.option,t=e&&e.flow,n=ee("#airbox");if(n.hidden=!t,!t)return;ee("#losses").parentElement.hidden=!t.bars.length;let s=Math.max(...t.bars.map(a=>a[2]),1e-6),r=fn(t.speed,"ft/min"),o=Bt(t.band[0])!==Bt(t.band[1])?`, between ${Bt(t.band[0])} and ${Bt(t.band[1])}`:"";ee("#airsay").textContent=`${Bt(t.at[0])} of ${Bt(e.label)} ${Pn()}${o}; ${r} in the duct.`,ee("#airfig").replaceChildren(t.fan.length>1?Ft(xw(t)):""),ee("#losses").replaceChildren(...t.bars.map(([a,c,l])=>{let h=z("i",{});return h.style.width=`${l/s*100}%`,z("li",{},z("span",{},a),z("b",{},h),z("em",{},fn(c,"in wg")))})),ee("#airmore").replaceChildren(...Qr(()=>yw(t)).map(a=>z("li",{},a)))}function yw(i){let e=i.need.map(([t,n,s,r])=>`${t[0].toUpperCase()}${t.slice(1)}: ${Bt(n)}${s?` to ${Bt(s)}`:""} ${Pn()}, ${r?"reached":"not reached"}.`);i.makeup&&(i.makeup.needed||i.makeup.threshold!==null)&&e.push(i.makeup.needed?`Makeup air is needed: ${Bt(i.makeup.supply)} ${Pn()}.`:`No makeup air is asked for up to ${Bt(i.makeup.threshold)} ${Pn()}.`);for(let[t,n,s]of i.advice)Math.abs(s)>=1&&e.push(`${t[0].toUpperCase()}${t.slice(1)} would give ${Bt(n)} ${Pn()}.`);return[...i.assumption?[`${i.assumption[0].toUpperCase()}${i.assumption.slice(1)}${/\.$/.test(i.assumption)?"":"."}`]:[],...i.together?[i.together]:[],...e,...i.notes]}var vw=/^\s*([-−]?)(?:(\d+(?:\.\d+)?)(?:[\s-]+(\d+)\/(\d+))?|(\d+)\/(\d+))\s*(in|"|mm|cm)?\s*$/,$g=i=>typeof i=="number"?{value:i,unit:void 0}:bw(vw.exec(i||"")),bw=i=>i&&{value:(i[1]?-1:1)*(Number(i[2]||0)+(i[3]?i[3]/i[4]:0)+(i[5]?i[5]/i[6]:0)),unit:i[7]};function us(i){let e=$g(i);return!e||!Number.isFinite(e.value)?null:e.unit==="mm"?e.value/25.4:e.unit==="cm"?e.value/2.54:e.value}function $d(i,e){let t=us(i);if(t===null)return null;let{unit:n}=$g(i);return n==="mm"||n==="cm"?`${Math.round(t*25.4+e*20)/(n==="cm"?10:1)} ${n}`:Xd(t+e)}function Xd(i){let e=Math.round(Math.abs(i)*64),t=Math.floor(e/64),n=e%64,s=64;for(;n&&n%2===0;)n/=2,s/=2;return`${i<0&&e?"-":""}${n?`${t?`${t} `:""}${n}/${s}`:t} in`}var qd=i=>!!(i.ceiling&&i.ceiling.joists&&i.ceiling.joists.at&&i.ceiling.joists.at.length),zi=i=>!!(i.ceiling&&i.ceiling.joists),Mw=i=>zi(i)&&i.ceiling.joists.direction==="along",Xg=i=>Mw(i)?"out from the hood wall":"from the left wall",Kg=[{name:"Hood",tables:["hood"],lead:["The hood’s centre is {hood.centre} from the left wall, {hood.mount} above the cooktop."],more:["It is {hood.width} wide and {hood.depth} deep. Its body is {hood.body} high, the rim {hood.canopy}. It weighs {hood.weight}.","The air leaves at the {hood.outlet.place} through {hood.outlet.section}, collar {hood.outlet.collar}, {hood.outlet.across} right of its centre line,",["{hood.outlet.up} above its underside.",i=>i.hood.outlet&&i.hood.outlet.place==="rear"],["{hood.outlet.out} out from the wall.",i=>!(i.hood.outlet&&i.hood.outlet.place==="rear")],["The cover reaches from {hood.cover.min} to {hood.cover.max}, {hood.cover.width} wide, {hood.cover.depth} deep.",i=>!!i.hood.cover],"The fan moves {hood.fan.rated} at {hood.fan.rated_at}.",["Its supply enters {hood.electrical.across} right of its centre line, {hood.electrical.up} above its underside.",i=>!!i.hood.electrical]]},{name:"Cooktop",tables:["cooktop"],lead:["The cooktop is {cooktop.kind}, {cooktop.width} wide, its centre {cooktop.centre} from the left wall."],more:["It is {cooktop.depth} deep, {cooktop.back} off the wall, its surface {cooktop.height} above the floor. Its burners give {cooktop.heat} together."]},{name:"Joists",tables:["ceiling"],finder:!0,lead:[[i=>`Joists every {ceiling.joists.spacing}, the first at {ceiling.joists.first} ${Xg(i)}.`,i=>zi(i)&&!qd(i)],[i=>`Joists at {ceiling.joists.at} ${Xg(i)}.`,qd],["A concrete ceiling, {ceiling.slab} thick.",i=>!zi(i)&&!!(i.ceiling&&i.ceiling.slab)]],slide:i=>zi(i)&&!qd(i)?"ceiling.joists.first":null,more:[["They are {ceiling.joists.size}, {ceiling.joists.kind}, and run {ceiling.joists.direction}.",zi],["Doubled: numbers {ceiling.joists.doubled}. Not there: numbers {ceiling.joists.missing}.",zi],"The ceiling is {ceiling.layers}."]},{name:"Room",tables:["kitchen","site"],lead:["The room is {kitchen.width} wide, {kitchen.depth} deep and {kitchen.ceiling} high."],more:[]},{name:"Walls",tables:["walls","spaces"],lead:[["Studs {walls.hood.studs.size} every {walls.hood.studs.spacing}, the first at {walls.hood.studs.first}; beyond the hood wall: {walls.hood.beyond}.",i=>!!(i.walls.hood.studs&&!i.walls.hood.studs.at)],["Studs {walls.hood.studs.size} at {walls.hood.studs.at}; beyond the hood wall: {walls.hood.beyond}.",i=>!!(i.walls.hood.studs&&i.walls.hood.studs.at)],["The hood wall is {walls.hood.frame}, {walls.hood.core} thick; beyond it: {walls.hood.beyond}.",i=>!i.walls.hood.studs]],more:["Inside: {walls.hood.inside}. Outside: {walls.hood.outside}.","It carries load: {walls.hood.bearing}. Fire-rated: {walls.hood.fire_rated}. Plates: {walls.hood.plates}."],rows:[{place:"walls.hood.openings",one:"window or door",row:()=>({kind:"window",operable:!0,left:"12 in",sill:"44 in",width:"24 in",height:"36 in"})}]},{name:"Above and roof",tables:["above","roof","outdoors"],lead:["Above the ceiling: {*above}."],more:[["A {roof.form} roof, {roof.pitch}, ridge {roof.ridge} at {roof.ridge_at}, overhang {roof.overhang}.",i=>!!i.roof]],rows:[{place:"outdoors",one:"thing outdoors that the cap keeps away from",row:()=>({kind:"operable window",face:"hood",left:"12 in",bottom:"60 in",width:"24 in",height:"36 in"})}]},{name:"Duct and cap",tables:["duct","cap"],lead:["Duct {duct.sections}, at most {duct.max_elbows} elbows, {duct.min_straight} straight between them."],more:["It may end in a wall: {cap.wall}; on the roof: {cap.roof}. It may be boxed in below the ceiling: {duct.boxing_allowed}."]},{name:"Rules",tables:["rules","tolerances","as_built"],lead:["The rules are those of {rules.profile}."],more:["The tape may be off: joists {tolerances.joists}, studs {tolerances.studs}, rafters {tolerances.rafters}."]},{name:"In the way",tables:["obstacles"],lead:[],more:[],rows:[{place:"obstacles",one:"thing in the way",always:!0,row:()=>({kind:"cabinet",left:"8 in",out:"0 in",bottom:"54 in",width:"24 in",depth:"12 in",height:"30 in"}),say:"It is a {kind}, {left} from the left, {width} wide, {bottom} above the floor, {height} high, {depth} deep."}]}],Zg=[["How large is the room?","It is {kitchen.width} along the hood wall, {kitchen.depth} deep and {kitchen.ceiling} high."],["What do you cook on?","The cooktop is {cooktop.kind}, {cooktop.width} wide and {cooktop.depth} deep, its centre {cooktop.centre} from the left wall."],["Which hood, and where?","One {hood.width} wide and {hood.depth} deep, {hood.fan.rated}, outlet {hood.outlet.section}. Its centre is {hood.centre} from the left wall."],["What is above the kitchen?","There is {*above}."],["How do the joists run?","They run {ceiling.joists.direction} (out from the hood wall, or along it), {ceiling.joists.size} every {ceiling.joists.spacing}, the first at {ceiling.joists.first}.",zi],["How thick is the concrete?","It is {ceiling.slab} thick.",i=>!zi(i)&&!!(i.ceiling&&i.ceiling.slab)],["What is beyond the hood wall?","Beyond it: {walls.hood.beyond}. Its studs are {walls.hood.studs.size} every {walls.hood.studs.spacing}, the first at {walls.hood.studs.first}."],["Whose rules apply?","Those of {rules.profile}."]],Sw={size:"2x8",spacing:"16 in",first:"14 in",direction:"out"},ww={form:"gable",pitch:"4/12",ridge:"along",ridge_at:"11 ft",overhang:"16 in",framing:{size:"2x6",spacing:"16 in",first:"14 in"}},qg=i=>i.roof?{}:{roof:ww},Yg=i=>zi(i)?{}:{"ceiling.joists":Sw},Jg=(i,e)=>e!==null&&typeof e=="object"?Object.entries(e).flatMap(([t,n])=>Jg(`${i}.${t}`,n)):[i];function Vc(i,e,t,n=[]){let s=Object.entries(t).flatMap(([a,c])=>Jg(a,c)),r=a=>n.some(c=>a===c||a.startsWith(`${c}.`)),o=[...new Set([...(i.assumed||[]).filter(a=>a!=="above.kind"&&!r(a)),...s])];return{"above.kind":e,...Object.fromEntries(n.map(a=>[a,null])),...t,...o.length||i.assumed?{assumed:o.length?o:null}:{}}}var jg=["above.storey_height","above.floor"],Yd={attic:["an attic",i=>Vc(i,"attic",{...Yg(i),...qg(i)},[...jg,"ceiling.slab"])],storey:["another storey",i=>Vc(i,"storey",Yg(i),["ceiling.slab"])],roof:["the roof itself, no attic",i=>Vc(i,"roof",qg(i),[...jg,"ceiling.slab"])],slab:["a concrete slab",i=>Vc(i,"slab",i.ceiling&&i.ceiling.slab?{}:{"ceiling.slab":i.unit==="mm"?"200 mm":"8 in"},["ceiling.joists"])]};function e0(i,e){let t=l=>l&&l.$ref?i.$defs[l.$ref.split("/").pop()]:l,n=l=>{let h=t(l);return h&&h.anyOf&&!h.properties?h.anyOf.map(t):[h]},s=l=>n(l).find(h=>h&&h.properties);function r(l){let h=i,d="";for(let u of l.split(".")){let f=n(h).find(_=>_&&_.type==="array");if(f&&!(s(h)||{properties:{}}).properties[u]){h=f.items||(f.prefixItems||[])[0];continue}let p=s(h);if(!p||!p.properties[u])return null;h=p.properties[u],d=h.description||(t(h)||{}).description||""}return{node:h,said:d}}function o(l){let h=r(l);if(!h)return{kind:"text",said:""};let d=n(h.node).filter(Boolean),u=h.said,f=d.find(g=>g.enum),p=d.flatMap(g=>g.type||[]);if(e[l])return{kind:"choice",options:e[l],said:u};if(f)return{kind:"choice",options:f.enum,said:u};if(p.includes("boolean"))return{kind:"yesno",said:u};let _=d.find(g=>g.type==="array");if(_){let g=n(_.items||{}).flatMap(m=>m&&m.properties&&!m.anyOf?"rows":m&&m.type||[]);return{kind:g.includes("rows")&&!g.includes("string")?"rows":"list",numbers:g.includes("integer")||g.includes("number")&&!g.includes("string"),pairs:g.includes("array"),said:u}}return d.some(g=>g.properties)&&!p.includes("string")?{kind:"table",said:u}:(p.includes("number")||p.includes("integer"))&&!p.includes("string")?{kind:"number",said:u}:{kind:p.includes("string")&&p.includes("number")?"measure":"text",said:u}}function a(l){let h=r(l),d=h&&s(h.node);return d?Object.keys(d.properties).flatMap(u=>{let f=`${l}.${u}`,p=o(f).kind;return p==="table"?a(f):p==="rows"?[]:[f]}):[]}function c(l){let h=r(l),d=h&&s(h.node);return h&&o(l).kind==="rows"?[l]:d?Object.keys(d.properties).flatMap(u=>{let f=`${l}.${u}`,p=o(f).kind;return p==="rows"?[f]:p==="table"?c(f):[]}):[]}return{kind:o,leaves:a,lists:c}}function Kd(i){return i.map((e,t)=>e&&typeof e.name=="string"&&e.name.length<=40&&!e.name.includes(".")?e.name:String(t+1))}function vn(i,e){let t=i;for(let n of e.split(".")){if(t==null)return;t=Array.isArray(t)?t[Kd(t).indexOf(n)]:t[n]}return t}var jd=i=>Array.isArray(i)?i.map(jd).join(" at "):typeof i=="object"&&i?Object.values(i).join(" "):i===!0?"yes":i===!1?"no":String(i),Wc=i=>i==null?"":Array.isArray(i)?i.map(jd).join(", "):jd(i),Tw=/^[-−+]?[\d\s./-]+?\s*([A-Za-z][A-Za-z/ ]*)$/,t0=/^[-−+]?[\d\s./-]+$/;function n0(i,e,{kind:t,numbers:n,pairs:s}){let r=i.trim();if(!r)return null;if(t==="yesno")return r==="yes";if(t==="number")return t0.test(r)&&!Number.isNaN(Number(r))?Number(r):r;if(t==="list"){let o=Array.isArray(e)?e[0]:void 0;return r.split(",").map(a=>a.trim()).filter(Boolean).map(a=>s?a.split(/\s+at\s+/):n?Number.isNaN(Number(a))?a:Number(a):Qg(a,o))}return t==="measure"?Qg(r,e):r}var Qg=(i,e)=>{let t=typeof e=="string"&&Tw.exec(e.trim());return t&&t0.test(i)?`${i} ${t[1].trim()}`:i};var qr=i=>i.replace(/_/g," "),i0=.25,s0={beyond:"what lies beyond",frame:"built of","studs.kind":"kind of stud","studs.spacing":"studs, centre to centre","studs.size":"studs, size","studs.first":"centre of the first stud","joists.kind":"kind of joist","framing.kind":"kind of rafter","framing.size":"rafters, size","framing.spacing":"rafters, centre to centre","framing.first":"centre of the first rafter"},Ew={"ceiling.joists.first":"roof.framing.first","ceiling.joists.spacing":"roof.framing.spacing"};function r0(i,{schema:e,choices:t,questions:n},s){let r=e0(e,t),o=new Map,a=new Map,c=new Map,l=new Set,h=null,d=[],u=new Set,f=n,p=!1,_={},g=!1,m=B=>["outdoors","room",...(B.spaces||[]).map(ae=>ae.name).filter(Boolean)],v=B=>/(^|\.)beyond$/.test(B)?{...r.kind(B),kind:"choice",options:m(h.raw)}:r.kind(B),M=(B,ae)=>d.filter(G=>G.field===B||!ae&&G.field.startsWith(`${B}.`)),b=B=>vn(h.raw,B)??((h.assumed[B]||[])[0]||void 0),S=B=>h.assumed[B]||_[B];function T(B){let ae=v(B),G=vn(h.raw,B),j=G===void 0?S(B):h.assumed[B],he=G===void 0?j?j[0]:"":Wc(G),ve=o.get(B),de=ve??he,Fe=y(B),Ce=M(B).length>0||u.has(B),Me=`v-${B.replace(/[^\w-]/g,"_")}`,qe=`${qr(B.replace(/\./g," "))}${ae.said?`: ${ae.said}`:""}${j?`; assumed, ${j[1]}`:Fe?`; ${Fe}`:""}`,at={id:Me,"data-path":B,class:`val${j||Fe?" taken":""}${Ce?" wrong":""}`,title:j?`assumed: ${j[1]}`:Fe||ae.said||null,"aria-label":qe,"aria-invalid":Ce?"true":null,"aria-describedby":M(B).length?`${Me}-m`:null,disabled:p},U;if(ae.kind==="choice"||ae.kind==="yesno"){let _t=ae.kind==="yesno"?["yes","no"]:ae.options.map(String),Qe=_t.includes(de)?_t:[de,..._t];U=z("select",{...at,on:{change:()=>D(B,U.value)}},Qe.map(pt=>z("option",{value:pt,selected:pt===de},pt||"not said")))}else{let _t=ae.kind==="list";U=z(_t?"textarea":"input",{...at,..._t?{rows:1}:{type:"text",value:de},placeholder:"not said",spellcheck:"false",autocomplete:"off",autocapitalize:"off",enterkeyhint:"done",on:{input:()=>{o.set(B,U.value),c.delete(B),w(U)},change:()=>D(B,U.value),blur:()=>{g||I(B,U.value)},keydown:Qe=>F(Qe,B,U)}}),_t&&(U.defaultValue=de),w(U)}return z("span",{class:"hold"},U,Fe?z("i",{class:"part"},` (${Fe})`):null)}function y(B){let ae=vn(h.raw,B),G=Object.keys(h.assumed).filter(j=>j.startsWith(`${B}.`)&&/^\d+$/.test(j.slice(B.length+1))).length;return G&&Array.isArray(ae)?`${G} of these ${ae.length} assumed`:""}let w=B=>{B.tagName==="TEXTAREA"&&(B.rows=Math.ceil((B.value.length||1)/34)),B.style.width=`${Math.max(3,Math.min(44,(B.value||B.placeholder).length+.8))}ch`};function F(B,ae,G){if(B.key==="Enter")B.preventDefault(),G.blur();else if(B.key==="Escape")o.delete(ae),s.forget(ae),ct(),Xe(ae);else if((B.key==="ArrowUp"||B.key==="ArrowDown")&&v(ae).kind==="measure"){let j=$d(G.value,(B.key==="ArrowUp"?1:-1)*(B.shiftKey?1:i0));j&&(B.preventDefault(),G.value=j,w(G),D(ae,j))}}let I=(B,ae)=>{o.get(B)===ae&&c.get(B)!==ae&&D(B,ae)};function D(B,ae){c.set(B,ae);let G=vn(h.raw,B);if(ae.trim()===(G===void 0?(S(B)||[""])[0]:Wc(G)).trim()&&!s.refused(B)){o.delete(B);return}let j=G??(S(B)||[])[0],he=n0(ae,j,v(B));o.set(B,ae),a.set(B,typeof he=="string"&&he!==ae.trim()?`Read as ${he}, for ${Wc(j)} stood there`:"");let ve=Ew[B],de=h.raw.assumed||[],Fe=ve&&de.includes(ve)&&vn(h.raw,"ceiling.joists.direction")==="out"&&vn(h.raw,"roof.ridge")==="along";s.change(Fe?{[B]:he,[ve]:he,assumed:de.filter(Ce=>Ce!==B)}:{[B]:he})}let $=B=>{let ae=B.problem==="missing"&&/^Add \w+ = "([^"]+)"(?: to \[[\w.]+\])?(,? .*)?$/.exec(B.remedy);return ae?`Type it, like ${ae[1]}${ae[2]||""}`:B.remedy},J=B=>z("p",{class:"msg",role:"alert","data-field":B.field},o.has(B.field)&&a.get(B.field)?`${a.get(B.field)}: `:null,z("b",{},`${B.problem}. `),$(B));function P(B,ae=!1){return B.flatMap(G=>M(G,ae).map(j=>{let he=J(j);return he.id=`v-${G.replace(/[^\w-]/g,"_")}-m`,he}))}function k(B,ae,G=""){let j=[],he=[],ve=[];for(let de of B.split(/(\{[^}]+\})/)){let Fe=/^\{(.+)\}$/.exec(de);if(!Fe){j.push(de);continue}if(Fe[1]==="*above"){j.push(re()),ve.push("above.kind","above","roof","ceiling.joists","ceiling.slab"),ae.add("above.kind");continue}let Ce=G+Fe[1];ae.add(Ce),he.push(Ce),j.push(T(Ce))}return[z("p",{class:"saying"},j),...P(he),...P(ve,!0)]}function re(){let B=vn(h.raw,"above.kind"),ae=h.assumed["above.kind"],G=z("select",{class:`val${ae?" taken":""}`,"data-path":"above.kind","aria-label":"what lies above the ceiling",disabled:p,on:{change:()=>s.change(Yd[G.value][1](h.raw))}},Object.entries(Yd).map(([j,[he]])=>z("option",{value:j,selected:j===B},he)));return z("span",{class:"hold"},G)}let Y=(B,ae,G)=>B.map(j=>Array.isArray(j)?j:[j,null]).filter(([,j])=>!j||j(h.raw)).flatMap(([j])=>k(typeof j=="function"?j(h.raw):j,ae,G));function me(B,ae){let G=B.filter(Me=>!ae.has(Me)),j=Me=>vn(h.raw,Me)!==void 0||S(Me),he=Me=>(ae.add(Me),[z("p",{class:"saying plain"},z("span",{},`${se(Me)}: `),T(Me)),...P([Me])]),ve=[...new Set(G.map(ce))],de=Me=>ve.length<2?Me.flatMap(he):ve.flatMap(qe=>{let at=Me.filter(U=>ce(U)===qe);return at.length?[qe?z("h4",{},`${qe[0].toUpperCase()}${qe.slice(1)} wall`):null,...at.flatMap(he)]:[]}),Fe=de(G.filter(j)),Ce=G.filter(Me=>!j(Me));return[...Fe,Ce.length?Pe(`open ${B[0]}`,"What else could be said",()=>de(Ce)):null]}let se=B=>{let[ae,G]=B.split(".").reverse();return s0[`${G}.${ae}`]||s0[ae]||ue(v(B).said)||qr(ae)},ce=B=>(/^walls\.(\w+)\./.exec(B)||["",""])[1],ue=B=>B&&B.replace(/"(\w+)"/g,"$1").replace("one of the [[spaces]]","a space beyond");function Pe(B,ae,G){let j=z("details",{class:"more",open:l.has(B)},z("summary",{},ae)),he=z("div"),ve=()=>{he.childNodes.length||he.append(...G().filter(Boolean))};return l.has(B)&&ve(),j.addEventListener("toggle",()=>{j.open?(l.add(B),ve()):l.delete(B)}),j.append(he),j}function ne(B,ae,G){let j=new Set([`${B}.${ae}.name`]),he=`${B}.${ae}.`,ve=qr(ae.replace(/-/g," ")),de=G&&G.say?k(G.say,j,he):[];return z("div",{class:"thing"},z("p",{class:"thname"},z("b",{},/^\d+$/.test(ae)?`No ${ae}`:ve),z("button",{type:"button",class:"quiet",disabled:p,"aria-label":`Take ${ve} away`,on:{click:()=>s.change({[`${B}.${ae}`]:null})}},"take away")),de,P([`${B}.${ae}`]),Pe(`${B}.${ae}`,de.length?"more of it":"its measures",()=>me(r.leaves(`${B}.${ae}`),j)))}function H(B,ae){let G=vn(h.raw,B)||[],j=ae?ae.one:qr(B.split(".").pop()).replace(/s$/,"");return[...Kd(G).map(he=>ne(B,he,ae)),ae?z("button",{type:"button",class:"quiet add",disabled:p,on:{click:()=>s.add(B,{name:le(ae.row().kind.split(" ").pop()),...ae.row()})}},`Add a ${j}`):null]}function le(B){let ae=JSON.stringify(h.raw);for(let G=1;;G++)if(!ae.includes(`"${B}-${G}"`))return`${B}-${G}`}function we(B){let ae=us(vn(h.raw,B)),G=us(vn(h.raw,B.replace("first","spacing")))||16;if(ae===null)return null;let j=z("input",{type:"range",class:"slide",min:0,max:G,step:i0,value:ae,disabled:p,"data-path":`${B} slide`,"aria-label":"Slide the joists",on:{input:()=>s.change({[B]:$d(vn(h.raw,B),j.value-us(vn(h.raw,B)))})}});return z("label",{class:"sliding"},z("span",{},"slide them"),j)}function Ue(B){let ae=new Set,G=B.tables.flatMap(Me=>r.lists(Me)),j=B.rows||[],he=Y(B.lead,ae),ve=B.slide&&B.slide(h.raw);ve&&he.push(we(ve));let de=B.tables.flatMap(Me=>r.kind(Me).kind==="rows"?[]:r.leaves(Me)),Fe=de.filter(Me=>h.assumed[Me]||y(Me)).length,Ce=j.filter(Me=>Me.always);return z("section",{class:"kg"},z("h3",{},B.name),he,Ce.flatMap(Me=>H(Me.place,Me)),de.length||G.length>Ce.length?Pe(B.name,`more${Fe?`, ${Fe} assumed`:""}`,()=>[...Y(B.more,ae),...me(de,ae),...G.filter(Me=>!Ce.some(qe=>qe.place===Me)).flatMap(Me=>{let qe=j.find(U=>U.place===Me);return(vn(h.raw,Me)||[]).length||qe?[z("h4",{},qr(Me.split(".").slice(-2).join(" "))),...H(Me,qe)]:[]})]):null)}function Se([B,ae],G){let j=new Set,he=k(ae,j),ve=[...j].filter(Me=>h.assumed[Me]),de=ve.filter(Me=>b(Me)!==void 0),Fe=de.filter(Me=>!u.has(Me)),Ce=!de.length&&![...j].some(Me=>u.has(Me)||M(Me).length);return z("li",{class:Ce?"answered":""},z("b",{},B),he,Ce?z("span",{class:"sure"},"✓ answered"):Fe.length?z("button",{type:"button",class:"quiet",disabled:p,on:{click:()=>{let Me=Fe.filter(qe=>!o.has(qe));Me.length&&s.change(Object.fromEntries(Me.map(qe=>[qe,b(qe)])))}}},"So it is"):null)}let Oe=()=>u.size?u.size===1?"One value is refused and waits; the plan goes on without it.":`${u.size} values are refused and wait; the plan goes on without them.`:"This cannot stand; the plan is as it was.";function ct(){if(!h)return;let B=document.activeElement,ae=i.contains(B)?B.dataset.path:null,G=ae&&/^text/.test(B.type)?[B.selectionStart,B.selectionEnd]:null,j=f?[z("p",{class:"lead"},"Everything is guessed until you say it. Answer what you know; the plan follows at once."),z("ol",{class:"ask"},Zg.filter(([,,de])=>!de||de(h.raw)).map(Se)),z("button",{type:"button",class:"quiet add",on:{click:()=>{f=!1,s.answered(),ct()}}},"Show everything that can be said")]:[z("p",{class:"lead"},"Change any number. ",z("span",{class:"val taken eg"},"Dotted")," ones are assumed, not measured."),...Kg.map(Ue)];g=!0,i.replaceChildren(...j),g=!1;let he=new Set([...i.querySelectorAll(".msg")].map(de=>de.dataset.field)),ve=d.filter(de=>!he.has(de.field));(d.length||u.size)&&i.prepend(z("div",{class:"refused"},z("p",{},z("b",{},Oe())," ",z("button",{type:"button",class:"quiet",on:{click:()=>{o.clear(),s.forget(),ct()}}},"Take back")),ve.map(de=>J({...de,problem:`${de.field?`${qr(de.field)}: `:""}${de.problem}`})))),ae&&Xe(ae,G)}function Xe(B,ae){let G=[...i.querySelectorAll("[data-path]")].find(j=>j.dataset.path===B);G&&(G.focus({preventScroll:!0}),ae&&G.setSelectionRange&&G.setSelectionRange(...ae))}return{show(B){let ae=!h||B.revision!==h.revision;h=B,ae&&ct()},settle(B,ae){let G=document.activeElement.dataset.path;for(let j of[...o.keys()])!B.has(j)&&(ae.has(j)||j!==G)&&o.delete(j)},plan(B){let ae=Object.fromEntries(B.map(([j,he,ve])=>[j,[he,ve]])),G=JSON.stringify(ae)===JSON.stringify(_);_=ae,G||ct()},refuse(B,ae){d=B,u=ae,ct()},disable(B){p=B,ct()}}}var Aw=1500,o0=4;async function Zd(i,e){return(await fetch(i,{method:"POST",headers:{"content-type":"application/json"},body:JSON.stringify(e||{})})).json()}var Rw=i=>Uint8Array.from(atob(i),e=>e.charCodeAt(0)).buffer;function a0({swap:i,moveTo:e,refresh:t}){let{schema:n,choices:s,questions:r}=N.live,o=N.live.number,a=0,c="",l=null,h=[],d=[],u=!1,f=!1,p=Promise.resolve(),_="";document.body.dataset.live="1",ee("#deskbar").hidden=ee("#measured").hidden=!1,ee("#measured > h2").textContent=r?"A few questions":"As measured";let g=ne=>new Set(ne.flatMap(H=>Object.keys(H.values))),m=(ne,H)=>ne.map(le=>({...le,values:Object.fromEntries(Object.entries(le.values).filter(([we])=>!H.has(we)))})).filter(le=>Object.keys(le.values).length);async function v(ne){let H=new Set(Object.keys(ne));if(h=m(h,H),d=m(d,H),H.size&&d.push({values:ne,said:!0}),!(u||f)){u=!0;do{let le=[...h,...d];d=[];try{let we=await Zd("change",{changes:le.map(Se=>Se.values)}),Ue=g(d);h=m(we.held.map(Se=>({values:le[Se].values,at:le[Se].said?we.state.revision:le[Se].at})),Ue),M.settle(new Set([...g(h),...Ue]),g(le)),M.refuse(we.mistakes,g(h)),I(we.state)}catch{ue()}}while(d.length&&!f);u=!1}}let M=r0(ee("#measured > div"),{schema:n,choices:s,questions:r},{change:v,refused:ne=>g(h).has(ne),forget:ne=>{h=ne?m(h,new Set([ne])):[],S()},add:async(ne,H)=>b("add",{place:ne,row:H}),answered:()=>{ee("#measured > h2").textContent="As measured"}});async function b(ne,H){if(f)return null;try{let le=await Zd(ne,H);return le.mistakes&&M.refuse(le.mistakes,g(h)),le.trouble&&(_=le.trouble,J()),le.state&&I(le.state),le}catch{return ue(),null}}let S=()=>{h.length?v({}):(M.refuse([],g(h)),l&&I(l))},T=()=>l&&h.filter(ne=>ne.at===l.revision).pop();function y(){let ne=T();return ne?(h=h.filter(H=>H!==ne),M.settle(g(h),g([ne])),S()):b("undo")}let w=()=>b("redo");async function F(){_="",await b("save"),J()}function I(ne){if(l&&ne.revision<l.revision)return;l=ne,M.show(l),ee("#undo").disabled=!(l.undo||T())||f,ee("#redo").disabled=!l.redo||f,ee("#save").disabled=f||!l.unsaved&&l.disk==="same";let H=g(h).size,le=H?`, without ${H} ${H===1?"value that is":"values that are"} refused`:"";ee("#saved").textContent=l.unsaved?`${l.file}: not saved`:l.disk==="same"?`${l.file}: saved${le}`:l.file,J()}function D(ne){let H=ee("#doing");H.hidden=!ne.doing&&!ne.stopped&&!ne.trouble;let le=ne.part===null?"":` ${Math.round(ne.part*10)*10} of 100`;H.replaceChildren(...ne.doing?[z("span",{class:"turning","aria-hidden":"true"}),z("span",{},`${ne.doing}${le}`),z("button",{type:"button",class:"quiet",on:{click:()=>b("stop")}},"stop")]:ne.stopped?[z("span",{},"stopped"),z("button",{type:"button",class:"quiet",on:{click:()=>b("goon")}},"go on")]:ne.trouble?[z("span",{class:"barword"},`not planned: ${ne.trouble}`)]:[])}function $(ne){let le=!ne.doing&&(ne.trouble||ne.stopped)&&ne.state.revision!==N.live.number?ne.trouble?{word:"Not planned",text:`This was not planned: ${ne.trouble.replace(/\.?$/,".")}`}:{word:"Stopped",text:"Planning was stopped before it had an answer."}:null;JSON.stringify(le)!==JSON.stringify(rt.old)&&(rt.old=le,t())}function J(){let ne=ee("#notice"),H=[],le=(Se,Oe)=>z("button",{type:"button",on:{click:Oe}},Se);f?H.push(z("p",{},z("b",{},"The program behind this page has ended. "),"What you see stays and the hood can still be moved; changes can no longer be planned or saved. ",le("Try again",Pe),l?le("Keep the scene as a file",Y):null)):(l&&l.disk==="changed"&&H.push(z("p",{},z("b",{},`${l.file} was changed by something else. `),l.unsaved?"Yours can be had back with Undo. ":"",le("Take up what is in the file",()=>b("load")),le("Keep mine",()=>b("keep")))),l&&l.disk==="gone"&&H.push(z("p",{},z("b",{},`${l.file} is no longer there. `),"Save writes it anew.")),_&&H.push(z("p",{},z("b",{},_))));let we=f?null:P(),Ue=ee("#trying");Ue.hidden=!we,Ue.replaceChildren(...we||[]),Ue.style.top=`${ee("#rulertxt").hidden?10:ee("#rulertxt").offsetHeight+20}px`,ne.hidden=!H.length,ne.replaceChildren(...H)}function P(){return!l||oh(Te.x,Te.h)?null:[z("span",{},"You are trying the hood at ",z("b",{},He(Te.x)),...Te.h!==Mn()?[", ",z("b",{},He(Te.h))," up"]:[],"; the scene has it at ",He(N.scene.hood.x),". "),z("button",{type:"button",class:"main",on:{click:re}},"Hang it here"),z("button",{type:"button",on:{click:()=>e(N.scene.hood.x,Mn())}},"Back")]}let k=ne=>N.scene.metric?`${Math.round(ne*254)/10} mm`:Xd(ne);function re(){let ne=Te.x-N.scene.hood.x,H=l.raw,le={};Math.abs(ne)>.01&&((!N.map||N.map.follows)&&(le["cooktop.centre"]=k(N.scene.cook.x+ne)),(H.hood.centre!==void 0||!N.map||!N.map.follows)&&(le["hood.centre"]=k(Te.x))),Math.abs(Te.h-Mn())>.01&&(le["hood.mount"]=k(Te.h)),v(le)}function Y(){let ne=z("a",{href:URL.createObjectURL(new Blob([l.text],{type:"text/plain"})),download:l.file});ne.click(),setTimeout(()=>URL.revokeObjectURL(ne.href),1e3)}let me=(ne,H)=>(p=p.then(()=>new Promise(le=>i(ne,H,le))),p);async function se(ne){if(a=ne.news,D(ne),I(ne.state),ne.plan){let{data:H,base:le}=ne.plan,we=ne.plan.model===null?null:ne.plan.model?Rw(ne.plan.model):null;if(ne.plan.model===null){let Ue=await fetch("model");if(Number(Ue.headers.get("x-plan"))!==H.live.number)return;we=await Ue.arrayBuffer()}o=H.live.number,c="",await me(H,we),M.plan(N.plan.assumptions),document.title=document.title.replace(/^.*: duct plan/,`${H.scene.name}: duct plan`),document.body.dataset.plan=o,document.body.dataset.base=le}else if(ne.rest)c="",await me(ne.rest,null),M.plan(N.plan.assumptions);else if(ne.more){let H=`${ne.more.fixes.length}/${!!ne.more.map}`;H!==c&&(c=H,await me({...N,fixes:ne.more.fixes,map:ne.more.map},null))}$(ne),document.body.dataset.doing=ne.doing}async function ce(){for(let ne=0;;)try{let H=await fetch(`news?after=${a}&have=${o}&whole=${N.live.whole?1:0}&wall=${N.map&&N.plan?1:0}&wait=25`),le=H.ok?await H.json():{ending:!0};if(le.ending){ue();return}ne=0,await se(le)}catch{if(++ne>=o0){ue();return}await new Promise(le=>setTimeout(le,Aw/o0))}}function ue(){if(!f){f=!0,rt.apply=null,document.body.dataset.live="gone",ee("#doing").hidden=!0,M.disable(!0);for(let ne of["#undo","#redo","#save"])ee(ne).disabled=!0;J()}}function Pe(){f=!1,rt.apply=v,a=0,document.body.dataset.live="1",M.disable(!1),J(),l&&I(l),ce()}rt.apply=v,rt.moved=J,rt.preview=async(ne,H)=>f?null:Zd("preview",{marks:ne,offset:H}).catch(()=>(ue(),null)),ee("#undo").onclick=y,ee("#redo").onclick=w,ee("#save").onclick=()=>F(),addEventListener("keydown",ne=>{if(!(ne.ctrlKey||ne.metaKey)||ne.altKey)return;let H=ne.key.toLowerCase(),le=ne.target.matches("input[type=text],textarea")&&ne.target.value!==ne.target.defaultValue;H==="s"?(ne.preventDefault(),F()):!le&&H==="z"?(ne.preventDefault(),ne.shiftKey?w():y()):!le&&H==="y"&&(ne.preventDefault(),w())}),M.plan(N.plan.assumptions),ce()}var Cw=[12,16,19.2,24],Iw=[400/25.4,600/25.4],l0=1;function Pw(i,e,t=1200){let n=i.split(/[,;\n]|\band\b/).map(a=>a.trim()).filter(Boolean),s=n.map(a=>e&&/^[\d.]+$/.test(a)?Number(a)/25.4:us(a)).sort((a,c)=>a-c);if(!n.length)return{trouble:""};let r=n.find(a=>us(a)===null);if(r!==void 0)return{trouble:`“${r}” is not a length. Write the joists’ centres like 13 1/4, 29, 45 1/8`};for(let a=1;a<s.length;a++)if(s[a]-s[a-1]<.5)return{trouble:`${He(s[a])} stands in it twice. Name every joist once, by its centre`};let o=s.find(a=>a<0||a>t);return o!==void 0?{trouble:`${He(o)} is beyond the ceiling, which ends at ${He(t)}. Count from the wall`}:{marks:s}}var Lw=i=>{let e=[...i].sort((n,s)=>n-s),t=e.length>>1;return e.length%2?e[t]:(e[t-1]+e[t])/2},Nw=(i,e)=>{let t=Math.max(1,Math.round(i/e));return Math.abs(i-t*e)<=2*l0?t:1};function $c(i,{width:e,reach:t,spacing:n,x:s,duct:r,clearance:o,metric:a}){let c=i.slice(1).map((S,T)=>S-i[T]),l=n;if(c.length){let S=Lw(c),T=(a?Iw:Cw).reduce((y,w)=>Math.abs(S-w)<Math.abs(S-y)?w:y);l=Math.abs(S-T)<=2*l0?T:S}let h=[...i];c.forEach((S,T)=>{let y=Nw(S,l);for(let w=1;w<y;w++)h.push(i[T]+S*w/y)});for(let S=i[0]-l;S-e/2>=0;S-=l)h.push(S);for(let S=i[i.length-1]+l;S+e/2<=t;S+=l)h.push(S);h.sort((S,T)=>S-T);let d=h.map((S,T)=>({n:T+1,at:S,lo:S-e/2,hi:S+e/2,measured:i.some(y=>Math.abs(y-S)<.02)})).filter(S=>S.lo>=-1e-9&&S.hi<=t+1e-9),u=[0,...d.flatMap(S=>[S.lo,S.hi]),t],f=r+2*o,p=[];for(let S=0;S<u.length;S+=2)u[S+1]-u[S]>1/16&&p.push({lo:u[S],hi:u[S+1],fits:u[S+1]-u[S]>=f-1e-9,here:u[S]<=s&&s<=u[S+1]});let _=s-r/2,g=s+r/2,m=d.filter(S=>S.lo<g+o-1e-9&&S.hi>_-o+1e-9).map(S=>[`joist ${S.n}`,Math.max(0,Math.min(S.hi,g)-Math.max(S.lo,_))]),v=p.filter(S=>S.fits).map(S=>[S.lo+f/2,S.hi-f/2]),M=m.length?v.filter(S=>S[1]<s).map(S=>S[1]-s).pop()??null:null,b=m.length?v.filter(S=>S[0]>s).map(S=>S[0]-s)[0]??null:null;return{spacing:l,joists:d,bays:p,duct:[_,g],blockers:m,left:M,right:b}}function Yr(){let{scene:i,tape:e}=N,t=e.along,n=e.joists[0],s=e.joists[1]?(e.joists[1].a+e.joists[1].b-n.a-n.b)/2:16;return{along:t,width:n?n.b-n.a:1.5,reach:t?i.depth:i.width,spacing:s,x:t?i.hood.out:i.hood.x+i.hood.across,duct:i.duct.section[1],clearance:i.duct.clearance,metric:i.metric}}var Dw=i=>({...i,joists:i.joists.map(([e,t,n,s,r])=>({n:e,at:t,lo:n,hi:s,measured:r})),bays:i.bays.map(([e,t,n,s])=>({lo:e,hi:t,fits:n,here:s}))});function Uw(i,e){let n=l=>6+l/e*368,o=`<path class="ceil" d="M${n(0)} ${52.5}H${n(e)}"/>`;for(let l of i.bays){let h=n(l.hi)-n(l.lo),d=(n(l.lo)+n(l.hi))/2,u=Ta(l.hi-l.lo);l.fits||(o+=`<rect class="nofit" x="${n(l.lo)}" y="22" width="${h}" height="30" fill="url(#p-none)"/>`),u.length*5.6<h+6&&(o+=`<text x="${d}" y="14" class="${l.here?"on":""}">${on(u)}</text>`)}let[a,c]=i.duct;o+=`<rect class="fd" x="${n(a)}" y="18" width="${n(c)-n(a)}" height="42"/>`;for(let l of i.joists){let h=Math.max(n(l.hi)-n(l.lo),4),d=n(l.at)-h/2,u=i.blockers.some(f=>f[0]===`joist ${l.n}`);o+=`<g class="fj${l.measured?"":" guess"}${u?" hit":""}"><rect x="${d}" y="22" width="${h}" height="30"${u?' fill="url(#p-bad)"':""}/>${l.measured&&!u?`<path d="M${d} 22l${h} 30m0 -30l${-h} 30"/>`:""}<text x="${n(l.at)}" y="65">${l.n}</text></g>`}return Ft(`<svg class="strip" viewBox="0 0 380 72" role="img" aria-label="${on(i.bays.map(l=>`bay ${He(l.lo)} to ${He(l.hi)}, ${He(l.hi-l.lo)} clear${l.here?", the duct is here":""}${l.fits?"":", too narrow"}`).join("; "))}">${o}</svg>`)}function Ow(i,e){let t=[],n=i.bays.find(r=>r.here),s=i.blockers;if(!s.length)t.push(z("p",{class:"clear"},"✓ ",n?`The duct goes straight up in the bay from ${He(n.lo)} to ${He(n.hi)}: ${He(i.duct[0]-n.lo)} free on the left, ${He(n.hi-i.duct[1])} on the right.`:"The duct goes straight up."));else{t.push(z("p",{class:"barword"},z("b",{},`${s.map(([o,a])=>a>0?`${o} is ${He(a)} into the duct`:`${o} is too close to the duct`).join("; ")}.`)));let r=[i.left,i.right].filter(o=>o!==null).sort((o,a)=>Math.abs(o)-Math.abs(a)).map(o=>`${He(Math.abs(o))} ${Wi(o)}`);t.push(z("p",{},r.length?[z("b",{},"Least shift: "),`${r.join(" or ")} and it goes straight up.`]:i.along?"The joists run along the wall, so no shift along it helps.":"No shift along this wall frees it.")),e&&t.push(z("p",{},z("b",{},"Offset: "),e==="looking"?"looking for two equal elbows that step round it …":e.offset?`${e.offset_words}. ${e.offset}`:"none found that fits inside the cover."));for(let[o,a,c,l,h]of i.opening||[])t.push(z("p",{},z("b",{},`To cut ${o}: `),`${a}; ${c} (${l}).${h.length?` An opening would need ${h.map(([d,u,f,p])=>`${p>1?`${p} × `:""}${d}${u?` ${u}`:""}${f===null?"":` ${He(f)}`}`).join("; ")}.`:""}`))}for(let r of i.notes||[])t.push(z("p",{class:"lead"},r));if(!i.notes){let r=i.joists.filter(o=>!o.measured).length;r&&t.push(z("p",{class:"lead"},`${r} more ${r===1?"joist was":"joists were"} carried on at ${He(i.spacing)}; not measured. Reckoned for the joists alone.`))}return t}function c0(){let i=ee("#marks"),e=ee("#marksay");if((N.scene.hood.outlet==="rear"||!N.tape.joists.length&&!N.tape.along)&&(ee("#finder").hidden=!0,!N.live))return;let t=0,n=0,s=(o,a)=>{let c=Yr();e.replaceChildren(Uw(o,c.reach),...Ow(o,a),rt.apply&&o.changes?z("button",{type:"button",class:"main",on:{click:()=>rt.apply(o.changes)}},"Take these joists"):"")};async function r(){let o=++t,{marks:a,trouble:c}=Pw(i.value,dn()==="mm",Yr().reach);if(!i.value.trim()||!a&&!rt.preview){e.replaceChildren(...c?[z("p",{class:"msg"},c)]:[]);return}if(!rt.preview){let f=Yr();s({...$c(a,f),along:f.along});return}let l=a&&dn()==="mm"&&!N.scene.metric?a.map(f=>`${f} in`).join(", "):i.value,h=await rt.preview(l,!1);if(o!==t||!h){if(!h&&a){let f=Yr();s({...$c(a,f),along:f.along})}return}if(h.trouble){e.replaceChildren(z("p",{class:"msg"},h.trouble));return}let d=Dw(h);if(!d.blockers.length){s(d);return}s(d,"looking");let u=await rt.preview(l,!0);o===t&&u&&!u.trouble&&s(d,u)}i.addEventListener("input",()=>{clearTimeout(n),n=setTimeout(r,rt.preview?250:0)}),i.addEventListener("keydown",o=>{o.key==="Enter"&&(clearTimeout(n),r())})}var Fw=/\d (in|ft|mm|m|cfm|l\/s|m\/s|ft\/min)\b/,Xc=i=>i.replace(/(\d) (?=\d+\/\d)/g,"$1 ").replace(/(\d) (?=(in|ft|mm|m|cfm|l\/s|m\/s|%)(?![a-z]))/g,"$1 "),Bn=null,ya=null,bn=0,Qd="",qc=new Map,Hi=()=>Bn.steps[bn],_i=()=>(qc.has(bn)||qc.set(bn,{answered:!1,picked:new Set}),qc.get(bn)),xa=i=>i.choices.length>0||i.candidates.length>0,u0=()=>Hi().covered&&!(xa(Hi())&&_i().answered);function Bw(i){i.covered=u0(),i.covered&&(i.verdict="Not told yet",i.text="",i.second="",i.findings=[],i.fixes=[],i.why=null,i.ghost=null)}function kw(i){return Uint8Array.from(atob(i.trim()),e=>e.charCodeAt(0)).buffer}function jr(i,e=!0){bn=Math.max(0,Math.min(Bn.steps.length-1,i));let t=Hi(),n=()=>{d0(),e&&(scrollTo(0,0),ee("#lesson h2").focus({preventScroll:!0}))};if(ef(),t.plan!==Qd){Qd=t.plan;let s=Bn.plans[t.plan];ya.swap(s?s.data:Bn.first,kw(s?s.model:ee("#model").textContent),n)}else n()}var zw=()=>{let i=Hi(),e=ee("#sentence").textContent;return e!==""&&(i.say.includes(e)||_i().answered&&i.reveal.includes(e))};function d0(){let i=ya.picture(),e=Hi();if(document.body.dataset.covered=u0()?"1":"0",ee("#job").textContent=Bn.title,ya.update(),document.body.dataset.said=zw()?"1":"0",!i)return;let t={};for(let r of Object.keys(i.shown))t[r]=!e.away.includes(r.toLowerCase());for(let r of Kn("#layers input"))r.checked=t[r.name]!==!1;i.layer(t),i.go(e.view);let n=ee(".tools"),s=ee('#views [aria-pressed="true"]');s&&n.scrollWidth>n.clientWidth&&(n.scrollLeft+=s.getBoundingClientRect().left-n.getBoundingClientRect().left-(n.clientWidth-s.offsetWidth)/2),Yc()}function Hw(i){let e=[...i].sort((s,r)=>s[0]-r[0]||s[1]-r[1]),t=(s,r,o)=>(r[0]-s[0])*(o[1]-s[1])-(r[1]-s[1])*(o[0]-s[0]),n=s=>s.reduce((r,o)=>{for(;r.length>1&&t(r[r.length-2],r[r.length-1],o)<=0;)r.pop();return r.push(o),r},[]).slice(0,-1);return[...n(e),...n([...e].reverse())]}function Yc(){let i=ya.picture(),e=ee("#pointing");if(!i)return;let t=ee("#pic"),n=t.clientWidth,s=t.clientHeight;e.setAttribute("viewBox",`0 0 ${n} ${s}`);let r="";for(let a of Hi().marks.flatMap(c=>c.bodies)){let c=a.map(l=>i.project(...l)).filter(l=>l[2]<1);c.length>2&&(r+=`M${Hw(c).map(l=>`${l[0].toFixed(1)} ${l[1].toFixed(1)}`).join("L")}Z`)}let o=r&&`<mask id="p-round"><rect width="${n}" height="${s}" fill="#fff"/><path d="${r}" fill="#000"/></mask><g mask="url(#p-round)"><path class="pa" d="${r}"/><path class="pb" d="${r}"/></g>`;e.innerHTML=o,Vw(i,n,s)}var h0=(i,e,t)=>{let n=t[0]-e[0],s=t[1]-e[1],r=n*n+s*s,o=r?Math.min(1,Math.max(0,((i[0]-e[0])*n+(i[1]-e[1])*s)/r)):0;return Math.hypot(i[0]-e[0]-o*n,i[1]-e[1]-o*s)},Jd=(i,e)=>Math.hypot(i[0]-e[0],i[1]-e[1]);function Gw(i,e,t,n){let s=2*n+2,r=[],o=[];for(let a=-8;a<=8;a++)for(let c=-14;c<14;c++)c&&r.push([Math.abs(c)+1.3*Math.abs(a)+(c<0?3:0),a,c]);r.sort((a,c)=>a[0]-c[0]||a[1]-c[1]||a[2]-c[2]);for(let a of i){let c=r.map(([,h,d])=>[a[0]+h*s,a[1]-(d+.2)*s]).filter(h=>h[0]>n&&h[0]<e-n&&h[1]>n&&h[1]<t-n&&o.every(d=>Jd(h,d)>=2*n)&&i.every(d=>Jd(h,d)>=n)),l=c.find(h=>o.every((d,u)=>Jd(i[u],a)<=n/2||h0(d,a,h)>=n+2&&h0(h,i[u],d)>=n+2));o.push(l||c[0]||a)}return o}function Vw(i,e,t){let n=ee("#letters"),s=ee("#poles"),r=Hi(),{picked:o,answered:a}=_i(),c=[];if(n.replaceChildren(),s.innerHTML="",a)return;for(let u of r.candidates){if(!u.place)continue;let[f,p,_]=i.project(...u.place);_<1&&f>=0&&p>=0&&f<=e&&p<=t&&c.push([u,[f,p]])}let l=c.map(([,u])=>u),h=Gw(l,e,t,e<620?15:13),d=h.map((u,f)=>`M${l[f].map(p=>p.toFixed(1)).join(" ")}L${u.map(p=>p.toFixed(1)).join(" ")}`).join("");s.setAttribute("viewBox",`0 0 ${e} ${t}`),s.innerHTML=`<path class="pl" d="${d}"/><path class="pk" d="${d}"/>${l.map(([u,f])=>`<circle cx="${u.toFixed(1)}" cy="${f.toFixed(1)}" r="3.5"/>`).join("")}`,c.forEach(([u],f)=>{let p=z("button",{type:"button",class:"letter","aria-pressed":String(o.has(u.letter)),"aria-label":`${u.letter}: ${u.title}`,on:{click:()=>Ww(u)}},u.letter);p.style.left=`${h[f][0]}px`,p.style.top=`${h[f][1]}px`,n.append(p)})}function Ww(i){let{picked:e,answered:t}=_i();if(t)return;e.has(i.letter)?e.delete(i.letter):e.add(i.letter);let n=ee(`#lesson input[value="${i.letter}"]`);n&&(n.checked=e.has(i.letter)),Yc()}var $w=i=>{let e=ee("#lessonlive");e.textContent="",setTimeout(()=>{e.textContent=i},60)},Xw=i=>Ft(i?'<svg viewBox="0 0 20 20" aria-hidden="true" class="tick"><path d="M3 11L8 16L17 4"/></svg>':'<svg viewBox="0 0 20 20" aria-hidden="true" class="cross"><path d="M4 4L16 16M16 4L4 16"/></svg>');function qw(i){let e=[i.say,i.ask,i.reveal,...i.choices.map(t=>t.say+t.because),...i.candidates.map(t=>t.measured+t.needs)].join(" ");return Fw.test(e)?z("p",{class:"lead asis","data-what":"This text has its numbers","data-air":/cfm|l\/s/.test(e)?"1":"",hidden:Zn()}):null}function ef(){let i=Hi(),e=ee("#lesson"),{answered:t}=_i();e.replaceChildren(...[z("div",{class:"count"},z("h1",{},Bn.title),z("span",{},`Step ${bn+1} of ${Bn.steps.length}`)),z("ol",{class:"dots","aria-hidden":"true"},Bn.steps.map((n,s)=>z("li",{class:s===bn?"on":s<bn?"was":""}))),z("h2",{tabindex:"-1"},i.title),z("p",{class:"cap"},Xc(i.say)),qw(i),xa(i)?jw(i):null,z("div",{class:"walk"},z("button",{type:"button",class:"back",disabled:bn===0,on:{click:()=>jr(bn-1)}},"Back"),xa(i)&&!t?z("button",{type:"button",class:"check",on:{click:Kw}},"Check"):null,bn===Bn.steps.length-1?z("button",{type:"button",class:xa(i)&&!t?"again":"again main",on:{click:Yw}},"Begin again"):z("button",{type:"button",class:xa(i)&&!t?"next":"next main",on:{click:()=>jr(bn+1)}},"Next"))].filter(Boolean))}function Yw(){qc.clear(),jr(0)}function jw(i){let{picked:e,answered:t}=_i(),n=i.candidates.length>0,r=(n?i.candidates.map(o=>({key:o.letter,right:o.broken,head:o.title,note:o.measured,after:[o.needs,o.source].filter(Boolean).join(" "),letter:o.letter})):i.choices.map((o,a)=>({key:String(a),right:o.right,head:o.say,note:"",after:e.has(String(a))||o.right?o.because:"",letter:""}))).map(o=>{let a=e.has(o.key),c=n?a===o.right:o.right,l=t?n?o.right?a?"Broken: found":"Broken: not found":a?"Not broken":"":o.right?"Right":a?"Not so":"":"";return z("label",{class:`opt${t?(o.right?" right":"")+(l&&!c?" miss":""):""}`},z("input",{type:n?"checkbox":"radio",name:"answer",value:o.key,checked:a,disabled:t,on:{change:h=>{n||e.clear(),h.target.checked?e.add(o.key):e.delete(o.key),Yc()}}}),z("span",{},o.letter?z("b",{class:"let"},`${o.letter} `):null,z("b",{},o.head),o.note?z("i",{},` ${o.note}`):null,l?z("em",{},Xw(c),l):null,t&&o.after&&(!n||l)?z("small",{},Xc(o.after)):null))});return z("fieldset",{},z("legend",{},Xc(i.ask)),r,t?z("div",{class:"reveal"},z("b",{},f0(i)),i.reveal?` ${Xc(i.reveal)}`:""):null)}function f0(i){let{picked:e}=_i();if(i.choices.length)return i.choices.some((r,o)=>r.right&&e.has(String(o)))?"Right.":e.size?"Not so.":"This is the answer.";let t=i.candidates.filter(r=>r.broken),n=t.filter(r=>e.has(r.letter)).length,s=[...e].length-n;return`${n} of ${t.length} found${s?`, ${s} that ${s===1?"is":"are"} not broken`:""}.`}function Kw(){_i().answered=!0,ef(),d0();let i=Hi();$w(`${f0(i)} ${i.reveal}`),ee("#lesson .walk .main").focus({preventScroll:!0}),ee("#lesson .reveal").scrollIntoView({block:"nearest"})}function p0(i){Bn={...N.lesson,first:N},ya=i,document.body.classList.add("lesson"),ee("#job").textContent=Bn.title;let e=ee(".answer"),t=ee("#sentence");ee(".bench").prepend(z("section",{id:"lesson","aria-label":`Lesson: ${Bn.title}`})),ee("#stage").after(e),t.setAttribute("role","heading"),t.setAttribute("aria-level","2"),ee("main").append(z("div",{id:"lessonlive",class:"sr",role:"status"})),ee("#flags").before(Ft('<svg id="pointing" aria-hidden="true"></svg>')),ee("#pic").append(Ft('<svg id="poles" aria-hidden="true"></svg>'),z("div",{id:"letters"}));let n=rt.drawn;return rt.cover=Bw,rt.drawn=()=>{n&&n(),Yc()},addEventListener("keydown",s=>{if(!(s.ctrlKey||s.metaKey||s.altKey||/TEXTAREA|SELECT/.test(s.target.tagName)||s.target.closest("[role=slider],#pic")||s.target.tagName==="INPUT"&&s.target.type!=="checkbox")){if(s.key==="ArrowRight"||s.key==="PageDown")jr(bn+1);else if(s.key==="ArrowLeft"||s.key==="PageUp")jr(bn-1);else return;s.preventDefault()}}),ef(),()=>jr(0,!1)}var m0=()=>({at:bn,steps:Bn.steps.length,plan:Qd,..._i(),picked:[..._i().picked]});xf();nh();Te.x=N.scene.hood.x;Te.h=Mn();var it=null,et=null,kn={},xi=null,jc=!1,ds=[],In=()=>!!N.map&&N.map.x.length>1;function sf(){it=Ks(Te.x,Te.h),rt.cover&&rt.cover(it);let i=new Set(it.findings.filter(s=>s.state==="broken"&&!s.waived).flatMap(s=>s.where));if(!it.parts&&it.why)for(let s of it.why.blockers)i.add(s[0]);let e=/^(hood|cover|cooktop|counter|floor)/,t=["GLAZING","BOARD","SKIN","ROOF"],n=Object.fromEntries(Object.values(N.pieces).map(s=>[s[2],s]));it.barred=new Set([...i].filter(s=>n[s]&&(!e.test(s)||/stud|joist|plate/.test(s))&&!t.includes(n[s][0])&&!N.glazed.includes(s)))}function Yn(){sf(),Zw(),ma(it,Ys);let i=Math.ceil(ee(".answer").getBoundingClientRect().height);i>qs.least&&(qs.least=i,ee(".answer").style.minHeight=`${i}px`),Gd(it,Zc,Ys),kg(it);for(let e of Kn("[data-jump]")){let t=In()&&w0(+e.dataset.jump)===void 0;e.disabled=t||!In(),e.title=t?`no place that works further ${+e.dataset.jump<0?"left":"right"}`:""}Wg(it),Gg(),Hg(it),et&&et.set(it),ba(),rt.moved&&rt.moved(it)}var g0="";function qs(){let i=ee(".answer"),e=[Te.x,Te.option,Te.fix],t=[i.clientWidth,innerWidth,dn(),N.scene.name,N.fixes.length].join();if(t!==g0&&(g0=t,qs.least=0),N.live&&!In())return;let n=[];Te.fix=null;for(let l of[N.scene.hood.x,...pn()])Te.x=l,Te.option=0,n.push(Ks(Te.x,Te.h));Te.x=N.scene.hood.x,N.plan.options.forEach((l,h)=>{Te.option=h,n.push(Ks(Te.x,Te.h))}),N.fixes.forEach((l,h)=>{l.plan&&(Te.fix=h,n.push(Ks(Te.x,Te.h)))}),[Te.x,Te.option,Te.fix]=e;let s=new Set,r=(l,h)=>l.reduce((d,u)=>h(u)>h(d)?u:d,l[0]),o=l=>l.verdict.startsWith("Works"),a=Ks(e[0],Te.h),c=innerWidth<=720?n.filter(l=>o(l)===o(a)):n;for(let l of[c.filter(h=>!o(h)&&h.fixes.length),c.filter(h=>o(h)||!h.fixes.length)])for(let h of[d=>d.text.length,d=>d.second.length+(d.from||"").length,d=>d.text.length*2+d.second.length])l.length&&s.add(r(l,h));i.style.minHeight="";for(let l of s)rt.cover&&rt.cover(l),ma(l,Ys),qs.least=Math.max(qs.least,Math.ceil(i.getBoundingClientRect().height));i.style.minHeight=`${qs.least}px`}var tf=0,b0=()=>{tf||(tf=requestAnimationFrame(()=>{tf=0,Yn()}))},Kc=0,ps=()=>{Kc++,Te.option=0,Te.fix=null,Te.picked=null};function Ys(i,e=Te.h,t=null){ps();let n=Kc,s=Te.x,r=Te.h,o=performance.now(),a=wa()?0:420,c=()=>{if(n!==Kc)return;let l=a?Math.min(1,(performance.now()-o)/a):1,h=1-(1-l)**3;Te.x=l<1?Ln(pn(),s+(i-s)*h):t!==null?i:Ln([...pn(),N.scene.hood.x],i),Te.h=l<1?r:t!==null?e:Ln([...ai(),Mn()],e),l>=1&&(Te.fix=t),Yn(),l<1&&requestAnimationFrame(c)};c()}function rf(i){ps(),Te.option=i,Te.x=N.scene.hood.x,Te.h=Mn(),Yn()}function Zc(i){if(Te.picked=i.code+i.n,i.place&&et){let[e,t,n]=i.place,s=it.end&&it.end.kind!==null?it.end.at:null,r=s&&Math.hypot(e-s[0],t-s[1],n-s[2])<16||t>N.scene.wall-.5||e<-3||e>N.scene.width+3;et.go(r?"outside":n>N.scene.ceiling-6?"ceiling":"near")}Gd(it,Zc,Ys),ba()}function M0(){let i=ee("#stage").clientWidth,e=i<620,t=e?44:128,n=e?14:i>900?112:40,s=ee("#pic").clientHeight||480,r=Ld(it),o=e?4:6,a=e?20:28,c=Math.min((i-t-n)/N.scene.width,(s-o)/(r-a));kn={w:i,s:c,left:t+Math.max(0,(i-t-n-c*N.scene.width)/2),phone:e,top:r,pad:o,high:s}}var _0=()=>it.barred;function Zw(){let i=!it.covered&&!it.verdict.startsWith("Works"),e=it.covered||!N.map?null:{x:it.x,kind:it.kind,back:/^Straight back/.test(it.words),boxed:!1,by:""};xi=hh({own:e,width:kn.w,s:kn.s,left:kn.left,x:it.x,h:it.h,hit:_0(),bad:i});let t=ee("#tape");t.setAttribute("viewBox",`0 0 ${kn.w} ${xi.height}`),t.style.height=`${xi.height}px`,t.innerHTML=xi.markup;let n=ee("#hang");n.style.left=`${xi.at/kn.w*100}%`,n.style.top=`${xi.ty+xi.th+4}px`,ee("#hangtxt").textContent=He(it.x),ee("#hangtxt").classList.toggle("flip",xi.at>kn.w-130);let s=pn();for(let[d,u]of[["aria-valuemin",s[0]],["aria-valuemax",s[s.length-1]],["aria-valuenow",it.x],["aria-valuetext",`${He(it.x)} from the left wall. ${it.verdict}. ${it.text}`]])n.setAttribute(d,u);let r=ee("#loupe");if(!kn.phone)return;let o=kn.w,a=15,c=o/a,l=Math.max(0,Math.min(N.scene.width-c,it.x-c/2)),h=hh({own:e,width:o,s:a,left:0,x0:l,x1:l+c,x:it.x,h:it.h,hit:_0(),loupe:!0,bad:i});r.setAttribute("viewBox",`0 0 ${o} ${h.height}`),r.style.height=`${h.height}px`,r.innerHTML=h.markup.replace(ch,"")}function Jw(i){i.addEventListener("pointerdown",e=>{if(!In()||e.target.closest("#ht"))return;i.setPointerCapture(e.pointerId);let t=ee("#stage").getBoundingClientRect(),n=i.id==="loupe",s=Te.x,r=e.clientX,o=i.id==="hang"?e.clientX-t.left-xi.at:0;Kc++;let a=c=>{let l=n?s-(c.clientX-r)/15:(c.clientX-t.left-o-kn.left)/kn.s;ps(),Te.x=Ln(pn(),l),b0()};n||a(e),i.onpointermove=a,i.onpointerup=i.onpointercancel=()=>{i.onpointermove=null},n||e.preventDefault(),ee("#hang").focus({preventScroll:!0})})}var nf=(i,e,t)=>{let n=i.indexOf(Ln(i,e));return i[Math.min(i.length-1,Math.max(0,n+t))]};function S0(i){ps(),Te.x=nf(pn(),Te.x,i),Yn()}function Qw(){let i=pn();return i.length<2?1:Math.max(1,Math.round(1/((i[i.length-1]-i[0])/(i.length-1))))}function Kr(i){Te.fix!==null&&(Te.x=Ln(pn(),Te.x)),ps(),Te.h=Ln(ai(),i),b0()}function w0(i){let e=pn(),t=r=>["e0","e1","e2","e3"].includes(Aa(r,Te.h)),n=[];e.forEach((r,o)=>{if(!t(r))return;let a=n[n.length-1],c=Aa(r,Te.h);a&&a.end===o-1&&a.kind===c?(a.end=o,a.xs.push(r)):n.push({end:o,kind:c,xs:[r]})});let s=n.map(r=>r.xs[Math.floor((r.xs.length-1)/2)]);return i>0?s.find(r=>r>Te.x+.2):s.filter(r=>r<Te.x-.2).pop()}function va(i){let e=w0(i);e!==void 0&&Ys(e)}function ba(){if(!et||!it)return;let i=ee('#views [data-v="outside"]'),e=wg("outside",it);i&&i.textContent!==e&&(i.textContent=e);let t=ee("#pic").clientWidth,n=ee("#pic").clientHeight,s=r=>r[2]<1&&r[0]>6&&r[0]<t-6&&r[1]>6&&r[1]<n-6;Fg({width:t,height:n,grid:kn,view:et.view(),project:et.project,inside:s,gone:et.gone,shown:et.shown,behind:et.behind(),tapeAt:xi.at},it,ds,Zc)}function fs(){qs(),sf(),M0(),et&&(et.set(it),et.size({width:ee("#pic").clientWidth,height:ee("#pic").clientHeight,grid:kn})),Yn()}function T0(){let i=ee("#views"),e=Kn("#layers input").filter(o=>!o.checked).map(o=>o.name),t=et&&et.view();for(let o of["#views button","#layers label","#key > *"])for(let a of Kn(o))a.remove();for(let[o,a]of Object.entries(Pd)){let c=document.createElement("button");c.dataset.v=o,c.textContent=o==="ceiling"&&!N.tape.joists.length?"up into the ceiling":a,c.onclick=()=>et&&et.go(o),c.setAttribute("aria-pressed",String(o===t)),i.append(c)}let n=ee("#layers > div");for(let[o,a]of Object.entries(Fd)){if(!["DUCT"].includes(o)&&!Object.values(N.pieces).some(h=>h[0]===o))continue;let c=document.createElement("label"),l=document.createElement("input");l.type="checkbox",l.name=o,l.checked=!e.includes(o),l.onchange=()=>et&&et.layer({[o]:l.checked}),c.append(l,a),n.append(c)}let s=ee("#key"),r=N.map?new Set(N.map.h.flatMap(o=>N.map.x.map(a=>Aa(a,o)))):null;if(N.map)for(let[o,{name:a,height:c}]of Object.entries(eo)){if(!r.has(o))continue;let l=Math.max(3,12*c),h=document.createElement("span");h.append(Ft(`<svg width="18" height="12" aria-hidden="true"><rect x=".5" y="${12-l}" width="17" height="${l-.5}" fill="url(#p-${o})" ${o==="bad"?'stroke="var(--bar)"':o==="e2"||o==="e3"?'stroke="var(--offline)"':""}/></svg>`),a),s.append(h)}if(N.map&&N.map.cells.some(o=>o.some(a=>a[5]>0))){let o=document.createElement("span");o.append(Ft('<svg width="18" height="12" aria-hidden="true"><rect x=".8" y="1.8" width="16.4" height="9.4" fill="none" stroke="var(--ink)" stroke-width="1.1" stroke-dasharray="3 2"/></svg>'),"boxed in the room"),s.append(o)}s.hidden=!N.map,document.body.dataset.map=In()?"1":"0",ee(".step").hidden=!In()&&!N.live;for(let o of Kn(".step button"))o.disabled=!In();ee("#hang").setAttribute("aria-disabled",String(!In())),x0(ee("#hang"),In(),In()?"Hood place along the tape":"The hood on the tape"),x0(ee("#ht"),ai().length>1)}function x0(i,e,t){i.setAttribute("role",e?"slider":"img"),i.tabIndex=e?0:-1,t&&i.setAttribute("aria-label",t)}function of(){let i=pn(),e=i.length>1?i[1]-i[0]:.25;for(let t of Kn("[data-nudge]")){let n=+t.dataset.nudge<0?"−":"+";t.textContent=`${n} ${He(e)}`,t.setAttribute("aria-label",`${He(e)} ${n==="+"?"right":"left"}`)}}function eT(){let i=ee("#cut"),e=ee("#cutaxis"),t=ee("#cutv"),n=()=>{let s={y:[N.cut.front,N.scene.wall],x:[-6,N.scene.width+6],z:[0,Ld(it)]},[r,o]=s[e.value],a=+i.value/100,c=e.value==="z"?a>=1:a<=0,l=Math.round((r+(o-r)*a)*2)/2;et&&et.cut(e.value,c?null:l),t.textContent=c?"off":e.value==="y"?l<=0?`${He(-l)} out`:`${He(l)} in`:He(l),i.setAttribute("aria-valuetext",t.textContent)};e.onchange=()=>{i.value=e.value==="z"?100:0,n()},i.oninput=n}function tT(){ee("#hang").addEventListener("keydown",i=>{let e={ArrowLeft:-1,ArrowRight:1}[i.key],t={ArrowDown:-1,ArrowUp:1}[i.key];if(In()){if(e)S0(e*(i.shiftKey?Qw():1));else if(t)Kr(nf(ai(),Te.h,t));else if(i.key==="PageDown")va(1);else if(i.key==="PageUp")va(-1);else if(i.key==="Home")ps(),Te.x=pn()[0],Yn();else if(i.key==="End")ps(),Te.x=pn()[pn().length-1],Yn();else return;i.preventDefault()}}),ee("#ht").addEventListener("keydown",i=>{let e={ArrowUp:1,ArrowRight:1,ArrowDown:-1,ArrowLeft:-1}[i.key],t=ai();if(e)Kr(nf(t,Te.h,e));else if(i.key==="Home")Kr(t[0]);else if(i.key==="End")Kr(t[t.length-1]);else return;i.preventDefault()}),ee("#ht").addEventListener("pointerdown",i=>{let e=ee("#ht");if(ai().length<2||!e.band)return;e.setPointerCapture(i.pointerId);let t=i.clientY,n=Te.h,s=(N.band.hi-N.band.lo)/(e.band[0]-e.band[1])||.2;e.onpointermove=r=>Kr(n-(r.clientY-t)*s),e.onpointerup=e.onpointercancel=()=>{e.onpointermove=null},e.focus(),i.preventDefault()}),ee("#pic").addEventListener("keydown",i=>{let e={ArrowLeft:[-.1,0],ArrowRight:[.1,0],ArrowUp:[0,-.08],ArrowDown:[0,.08]}[i.key];e&&et&&i.target===ee("#pic")&&(et.turn(...e),i.preventDefault())}),addEventListener("keydown",i=>{if(!(/INPUT|TEXTAREA|SELECT/.test(i.target.tagName)||i.ctrlKey||i.metaKey||i.altKey))if(i.key==="0")et&&et.go("square");else if(i.key>="1"&&i.key<="9"){let e=it.findings.find(t=>t.n===+i.key);e&&Zc(e)}else i.key==="]"&&In()?va(1):i.key==="["&&In()?va(-1):i.key==="Escape"&&(jc&&E0(!1),ee("#layers").open=!1)})}function E0(i){jc=i,ds=[],ee("#ruler").setAttribute("aria-pressed",String(i)),ee("#rulertxt").hidden=!i,ee("#rulertxt").textContent=i?kd([]):"",ee("#pic").classList.toggle("measuring",i),ba()}function nT(){ee("#ruler").onclick=()=>E0(!jc);let i=null;ee("#pic").addEventListener("pointerdown",e=>{i=[e.clientX,e.clientY]}),ee("#pic").addEventListener("pointerup",e=>{if(!jc||!et||!i||Math.hypot(e.clientX-i[0],e.clientY-i[1])>5||e.target.closest("button"))return;let t=ee("#pic").getBoundingClientRect(),n=et.pick(e.clientX-t.left,e.clientY-t.top);n&&(ds=ds.length===2?[n]:[...ds,n],ee("#rulertxt").textContent=kd(ds),ba())})}function A0(){et&&(document.documentElement.dataset.paper="1",et.theme(),et.draw(),ee("#still").src=et.full().toDataURL("image/jpeg",.9),ee("#stillover").replaceChildren(ee("#over").cloneNode(!0)),ee("#stillflags").replaceChildren(...[...ee("#flags").children].map(i=>i.cloneNode(!0))),ee("#printpic").style.setProperty("--ar",`${ee("#pic").clientWidth}/${ee("#pic").clientHeight}`))}function iT(){["#hang","#tape","#loupe"].forEach(e=>Jw(ee(e)));for(let e of Kn("[data-jump]"))e.onclick=()=>va(+e.dataset.jump);for(let e of Kn("[data-nudge]"))e.onclick=()=>S0(Math.sign(+e.dataset.nudge));ee("#unit").onclick=()=>{th(dn()==="in"?"mm":"in"),ee("#unit").textContent=dn()==="in"?"Show mm":"Show inches",Hc(rf),of(),fs()},ee("#unit").textContent=dn()==="in"?"Show mm":"Show inches";let i=()=>{ee("#theme").textContent=Jr()?"Light":"Dark"};ee("#theme").onclick=()=>{document.documentElement.dataset.theme=Jr()?"light":"dark",i(),et&&et.theme(),Yn()},i(),matchMedia("(prefers-color-scheme: dark)").addEventListener("change",()=>{i(),et&&et.theme(),Yn()}),ee("#print").onclick=()=>print(),addEventListener("beforeprint",A0),addEventListener("afterprint",()=>{delete document.documentElement.dataset.paper,et&&et.theme()}),addEventListener("resize",()=>{clearTimeout(fs.later),fs.later=setTimeout(fs,60)})}function y0(i){et=null,ee("#nopic").hidden=!1,ee("#nopic").textContent="This browser draws no 3D here. The tape, the findings and the order of work are all there; the still picture shows the rest.",document.body.dataset.ready="flat",console.info(String(i))}function v0(i,e,t=()=>{}){let n=i.plan===N.plan||!e&&!!N.live&&i.live.number===N.live.number,s=()=>{let r=[Te.x,Te.h];eh(i),n?In()&&Te.fix===null&&([Te.x,Te.h]=[Ln([...pn(),N.scene.hood.x],r[0]),Ln([...ai(),Mn()],r[1])]):(Te.x=N.scene.hood.x,Te.h=Mn(),ps(),ds=[],et&&et.furnish()),ee("#job").textContent=N.scene.name,ee("#invented").hidden=!N.scene.invented,T0(),of(),Hc(rf),Vd(),fs(),t()};et&&!n?et.read(e,i.pieces,s):s()}function sT(){ee("#job").textContent=N.scene.name,ee("#invented").hidden=!N.scene.invented;let i=N.lesson?p0({swap:v0,update:Yn,picture:()=>et}):null;sf(),M0(),T0(),of(),eT(),tT(),nT(),iT(),Hc(rf),Vd();let e=Uint8Array.from(atob(ee("#model").textContent.trim()),t=>t.charCodeAt(0)).buffer;try{et=Lg(ee("#pic"),e,{drawn:()=>{ba(),rt.drawn&&rt.drawn()},failed:y0,stood:t=>{for(let n of Kn("#views button"))n.setAttribute("aria-pressed",String(n.dataset.v===t))},ready:()=>{fs(),i&&i(),document.body.dataset.ready="1"}})}catch(t){y0(t)}fs(),c0(),document.fonts&&document.fonts.ready.then(fs),N.live&&a0({swap:v0,moveTo:Ys,refresh:Yn})}sT();window.routeviz={data:()=>N,live:rt,bays:i=>$c(i,Yr()),info:()=>et&&et.info(),state:Te,answer:()=>it,moveTo:Ys,setHeight:Kr,update:Yn,picture:()=>et,fixes:()=>Ra(it),measured:()=>ds,toPaper:A0,lesson:m0};})();
// built from 4a91b875fe16b6b4
